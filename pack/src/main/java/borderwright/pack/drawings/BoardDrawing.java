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
    /** Room for texts that do not fit on their piece, above and below. */
    private static final double OUTSIDE_MM = 4.2;

    /** Room for the line of the board. */
    private static final double LINE_MM = 0.4;

    private final DrawingBuilder sketch;
    private final double perMm;
    private final double aboveMm;

    private BoardDrawing(DrawingBuilder sketch, double perMm, double aboveMm) {
        this.sketch = sketch;
        this.perMm = perMm;
        this.aboveMm = aboveMm;
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
        PrintedFigures f = PrintedFigures.in(lengths.units());
        double perMm = (widthMm - 0.6) / longest.mm();
        // The paper is only as high as the texts need.
        Texts texts = Texts.of(board, names, waiting, f);
        double above = texts.namesFit(perMm) ? LINE_MM : OUTSIDE_MM;
        double below = texts.lengthsFit(perMm) ? LINE_MM : OUTSIDE_MM;
        DrawingBuilder sketch = new DrawingBuilder(widthMm, above + BOARD_MM + below);
        BoardDrawing drawing = new BoardDrawing(sketch, perMm, above);
        drawing.board(board, texts, waiting);
        return sketch.finish(f.text(DrawingMessage.DRAWN_BOARD.of(Integer.toString(board.number()))));
    }

    /** What is written on the pieces and on the rest: names over lengths. */
    private record Texts(List<Fitted> names, List<Fitted> lengths, Fitted rest, boolean keep) {
        private static Texts of(
                CuttingPlan.BoardCuts board, List<String> names, List<String> waiting, PrintedFigures f) {
            List<Fitted> labels = new ArrayList<>();
            List<Fitted> lengths = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                CuttingPlan.Cut cut = board.cuts().get(i);
                String label = waiting.contains(cut.label())
                        ? f.text(DrawingMessage.DRAWN_WAITS.of(names.get(i)))
                        : names.get(i);
                label = cut.turnedOver() ? f.text(DrawingMessage.DRAWN_FACE_DOWN.of(label)) : label;
                labels.add(new Fitted(label, TypeFace.BOLD, cut.length().mm()));
                lengths.add(new Fitted(
                        f.piece(cut.length()), TypeFace.REGULAR, cut.length().mm()));
            }
            double offcut = board.offcut().mm();
            String rest = f.text((board.keep() ? DrawingMessage.DRAWN_KEEP : DrawingMessage.DRAWN_WASTE).of(offcut));
            return new Texts(labels, lengths, new Fitted(rest, TypeFace.REGULAR, offcut), board.keep());
        }

        private boolean namesFit(double perMm) {
            return names.stream().allMatch(name -> name.fits(perMm));
        }

        private boolean lengthsFit(double perMm) {
            return lengths.stream().allMatch(length -> length.fits(perMm)) && (!keep || rest.fits(perMm));
        }
    }

    /** A text and the length of the board that it belongs to. */
    private record Fitted(String text, TypeFace face, double onMm) {
        private boolean fits(double perMm) {
            return face.widthEm(text) * TextSize.FINE.emMm() + 1 < onMm * perMm;
        }
    }

    private void board(CuttingPlan.BoardCuts board, Texts texts, List<String> waiting) {
        double end = board.length().mm();
        part(0, end, Tone.WHITE);
        // What no piece covers between the trims is sawdust and slivers.
        double last = board.cuts().isEmpty()
                ? board.trim().mm()
                : end(board.cuts().get(board.cuts().size() - 1));
        waste(0, last);
        for (int i = 0; i < board.cuts().size(); i++) {
            CuttingPlan.Cut cut = board.cuts().get(i);
            double from = cut.start().mm();
            double to = from + cut.length().mm();
            Tone tone = waiting.contains(cut.label()) ? Tone.ACCENT : Tone.BLACK;
            sketch.shape(outline(cut), Pen.EDGE, Tone.PALE);
            inside(texts.names.get(i), from, to, 2.9, tone);
            inside(texts.lengths.get(i), from, to, 5.8, tone);
        }
        double offcut = board.offcut().mm();
        if (offcut > 0) {
            double from = end - board.trim().mm() - offcut;
            waste(last, from);
            rest(from, from + offcut, texts);
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
                new Spot(x(from + cut.left().upper().mm()), aboveMm),
                new Spot(x(to - cut.right().upper().mm()), aboveMm),
                new Spot(x(to - cut.right().lower().mm()), aboveMm + BOARD_MM),
                new Spot(x(from + cut.left().lower().mm()), aboveMm + BOARD_MM));
    }

    private double x(double mm) {
        return 0.3 + mm * perMm;
    }

    private List<Spot> rectangle(double from, double to) {
        return List.of(
                new Spot(x(from), aboveMm),
                new Spot(x(to), aboveMm),
                new Spot(x(to), aboveMm + BOARD_MM),
                new Spot(x(from), aboveMm + BOARD_MM));
    }

    private void part(double from, double to, Tone fill) {
        sketch.shape(rectangle(from, to), Pen.EDGE, fill);
    }

    private void waste(double from, double to) {
        if (to - from > 0.05) {
            sketch.shape(rectangle(from, to), null, Tone.GREY);
        }
    }

    /** How long a rest is that is kept; of waste where there is room to say it. */
    private void rest(double from, double to, Texts texts) {
        Fitted text = texts.rest;
        sketch.hatch(rectangle(from, to), Hatch.WASTE);
        if (text.fits(perMm)) {
            sketch.textOnWhite(
                    text.text,
                    new Spot((x(from) + x(to)) / 2, aboveMm + 4.3),
                    TextSize.FINE,
                    Mark.Anchor.MIDDLE,
                    TypeFace.REGULAR);
        } else if (texts.keep) {
            inside(text, from, to, 5.8, Tone.BLACK);
        }
    }

    /** A text inside its part of the board when it fits there, above or below the board with a leader when not. */
    private void inside(Fitted text, double from, double to, double down, Tone tone) {
        double middle = (x(from) + x(to)) / 2;
        if (text.fits(perMm)) {
            sketch.text(
                    text.text, new Spot(middle, aboveMm + down), TextSize.FINE, Mark.Anchor.MIDDLE, text.face, 0, tone);
            return;
        }
        double y = down < 4 ? aboveMm - 1.1 : aboveMm + BOARD_MM + 2.6;
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (double shift = 0; shift <= 24; shift += 2) {
            places.add(new DrawingBuilder.Place(new Spot(middle + shift, y), Mark.Anchor.MIDDLE));
            places.add(new DrawingBuilder.Place(new Spot(middle - shift, y), Mark.Anchor.MIDDLE));
        }
        sketch.label(text.text, new Spot(middle, aboveMm + down - 0.8), TextSize.FINE, text.face, tone, places, 0);
    }
}
