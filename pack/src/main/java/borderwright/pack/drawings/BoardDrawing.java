package borderwright.pack.drawings;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Hatch;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.List;

/** One board with its pieces in the order in which they are cut, left end to the left. */
public final class BoardDrawing {
    private static final double BOARD_MM = 7;
    private static final double ABOVE_MM = 4.2;
    private static final double BELOW_MM = 4.2;

    private final DrawingBuilder sketch;
    private final double perMm;
    private final LengthFormat lengths;
    private final PrintedFigures f;

    private BoardDrawing(DrawingBuilder sketch, double perMm, LengthFormat lengths) {
        this.sketch = sketch;
        this.perMm = perMm;
        this.lengths = lengths;
        this.f = PrintedFigures.in(lengths.units());
    }

    /**
     * A board; all boards of a pack are drawn to the scale at which the longest fills the width.
     *
     * @param names what is written on each piece, in the order of the board's cuts
     */
    public static Drawing draw(
            CuttingPlan.BoardCuts board,
            List<String> names,
            Length longest,
            List<String> waiting,
            LengthFormat lengths,
            double widthMm) {
        DrawingBuilder sketch = new DrawingBuilder(widthMm, ABOVE_MM + BOARD_MM + BELOW_MM);
        BoardDrawing drawing = new BoardDrawing(sketch, (widthMm - 0.6) / longest.mm(), lengths);
        drawing.board(board, names, waiting);
        return sketch.finish(drawing.f.text(DrawingMessage.DRAWN_BOARD.of(Integer.toString(board.number()))));
    }

    private void board(CuttingPlan.BoardCuts board, List<String> names, List<String> waiting) {
        double end = board.length().mm();
        part(0, end, Tone.WHITE);
        // What no piece covers between the trims is sawdust and slivers.
        double last = names.isEmpty() ? board.trim().mm() : end(board.cuts().get(names.size() - 1));
        waste(0, last);
        for (int i = 0; i < names.size(); i++) {
            CuttingPlan.Cut cut = board.cuts().get(i);
            double from = cut.start().mm();
            double to = from + cut.length().mm();
            boolean waits = waiting.contains(cut.label());
            sketch.shape(outline(cut), Pen.EDGE, Tone.PALE);
            piece(cut, names.get(i), from, to, waits);
        }
        double offcut = board.offcut().mm();
        if (offcut > 0) {
            double from = end - board.trim().mm() - offcut;
            waste(last, from);
            rest(from, from + offcut, board.keep());
            last = from + offcut;
        }
        waste(last, end);
        sketch.shape(rectangle(0, end), Pen.BOLD, null);
    }

    private static double end(CuttingPlan.Cut cut) {
        return cut.start().plus(cut.length()).mm();
    }

    /** The piece with its ends as they slant: a fence angle as seen on the face, a blade tilt as seen on the edge. */
    private List<Spot> outline(CuttingPlan.Cut cut) {
        double from = cut.start().mm();
        double to = end(cut);
        return List.of(
                new Spot(x(from + cut.left().upper().mm()), ABOVE_MM),
                new Spot(x(to - cut.right().upper().mm()), ABOVE_MM),
                new Spot(x(to - cut.right().lower().mm()), ABOVE_MM + BOARD_MM),
                new Spot(x(from + cut.left().lower().mm()), ABOVE_MM + BOARD_MM));
    }

    private double x(double mm) {
        return 0.3 + mm * perMm;
    }

    private List<Spot> rectangle(double from, double to) {
        return List.of(
                new Spot(x(from), ABOVE_MM),
                new Spot(x(to), ABOVE_MM),
                new Spot(x(to), ABOVE_MM + BOARD_MM),
                new Spot(x(from), ABOVE_MM + BOARD_MM));
    }

    private void part(double from, double to, Tone fill) {
        sketch.shape(rectangle(from, to), Pen.EDGE, fill);
    }

    private void waste(double from, double to) {
        if (to - from > 0.05) {
            sketch.shape(rectangle(from, to), null, Tone.GREY);
        }
    }

    private void piece(CuttingPlan.Cut cut, String name, double from, double to, boolean waits) {
        String label = waits ? f.text(DrawingMessage.DRAWN_WAITS.of(name)) : name;
        label = cut.turnedOver() ? f.text(DrawingMessage.DRAWN_FACE_DOWN.of(label)) : label;
        Tone tone = waits ? Tone.ACCENT : Tone.BLACK;
        inside(label, from, to, 2.9, TypeFace.BOLD, tone);
        inside(lengths.piece(cut.length().mm()), from, to, 5.8, TypeFace.REGULAR, tone);
    }

    private void rest(double from, double to, boolean keep) {
        sketch.hatch(rectangle(from, to), Hatch.WASTE);
        double middle = (x(from) + x(to)) / 2;
        String text = f.text((keep ? DrawingMessage.DRAWN_KEEP : DrawingMessage.DRAWN_WASTE).of(to - from));
        double width = TypeFace.REGULAR.widthEm(text) * TextSize.FINE.emMm();
        if (width + 1.5 < x(to) - x(from)) {
            sketch.textOnWhite(
                    text, new Spot(middle, ABOVE_MM + 4.3), TextSize.FINE, Mark.Anchor.MIDDLE, TypeFace.REGULAR);
        } else {
            inside(text, from, to, 5.8, TypeFace.REGULAR, Tone.BLACK);
        }
    }

    /** A text inside its part of the board when it fits there, above or below the board with a leader when not. */
    private void inside(String text, double from, double to, double down, TypeFace face, Tone tone) {
        double middle = (x(from) + x(to)) / 2;
        double width = face.widthEm(text) * TextSize.FINE.emMm();
        if (width + 1 < x(to) - x(from)) {
            sketch.text(text, new Spot(middle, ABOVE_MM + down), TextSize.FINE, Mark.Anchor.MIDDLE, face, 0, tone);
            return;
        }
        double y = down < 4 ? ABOVE_MM - 1.1 : ABOVE_MM + BOARD_MM + 2.6;
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (double shift = 0; shift <= 24; shift += 2) {
            places.add(new DrawingBuilder.Place(new Spot(middle + shift, y), Mark.Anchor.MIDDLE));
            places.add(new DrawingBuilder.Place(new Spot(middle - shift, y), Mark.Anchor.MIDDLE));
        }
        sketch.label(text, new Spot(middle, ABOVE_MM + down - 0.8), TextSize.FINE, face, tone, places, 0);
    }
}
