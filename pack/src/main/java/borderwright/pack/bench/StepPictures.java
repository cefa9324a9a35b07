package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.BenchUpright;
import borderwright.engine.assembly.Span;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.assembly.order.AssemblyOrder;
import borderwright.engine.assembly.order.AssemblyStep;
import borderwright.engine.assembly.order.Diagonal;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Ring;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A small picture for each step: a wall on the bench from above, the corners with their diagonals, or the box so far. */
final class StepPictures {
    private static final double MARGIN_MM = 3;
    /** The picture of the corners: as high as this, with room for their numbers at the sides, above and below. */
    private static final double SQUARE_HIGH_MM = 34;

    private static final double LEAST_SQUARE_MM = 18;
    private static final double NAMED_MM = 9;
    private static final double LABELLED_MM = 6;

    private final AssemblyOrder order;
    private final PrintedFigures f;
    private final double turnRad;
    private final double widthMm;
    private final double heightMm;
    private final Set<String> standing = new HashSet<>();

    /** @param turnRad how far the plan of the pegs is turned: boxes are seen from the same side */
    StepPictures(AssemblyOrder order, PrintedFigures f, double turnRad, double widthMm, double heightMm) {
        this.order = order;
        this.f = f;
        this.turnRad = turnRad;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** Steps are to be asked for in their order. */
    Drawing of(AssemblyStep step) {
        return switch (step.kind()) {
            case LAY_WALL -> onBench(step);
            case SQUARE -> square(step);
            default -> standing(step);
        };
    }

    private Drawing onBench(AssemblyStep step) {
        WallBench wall = order.bench().walls().stream()
                .filter(w -> step.pieces().contains(w.parts().boards().get(0).label()))
                .findFirst()
                .orElseThrow();
        Span along = wall.faceSpan();
        double low = StrictMath.min(
                0,
                wall.carried().stream()
                        .mapToDouble(u -> u.height().fromMm())
                        .min()
                        .orElse(0));
        double high = wall.heightMm();
        double ratio =
                StrictMath.max(along.lengthMm() / (widthMm - 2 * MARGIN_MM), (high - low) / (heightMm - 2 * MARGIN_MM));
        DrawingBuilder sketch = new DrawingBuilder(widthMm, (high - low) / ratio + 2 * MARGIN_MM);
        double bottom = MARGIN_MM + high / ratio;
        for (BenchUpright upright : wall.carried()) {
            sketch.shape(flat(upright.face(), upright.height(), along, ratio, bottom), Pen.EDGE, Tone.LIGHT);
        }
        for (BenchBoard board : wall.parts().boards()) {
            sketch.shape(flat(board.face(), board.height(), along, ratio, bottom), Pen.EDGE, null);
        }
        return sketch.finish(f.text(BenchMessage.STEP_LYING.of(step.number(), wall.mark())));
    }

    private static List<Spot> flat(Span x, Span up, Span along, double ratio, double bottom) {
        double left = MARGIN_MM + (x.fromMm() - along.fromMm()) / ratio;
        double right = MARGIN_MM + (x.toMm() - along.fromMm()) / ratio;
        double low = bottom - up.fromMm() / ratio;
        double high = bottom - up.toMm() / ratio;
        return List.of(new Spot(left, low), new Spot(right, low), new Spot(right, high), new Spot(left, high));
    }

    private Drawing square(AssemblyStep step) {
        Ring ring = order.bench().box().plan().outline();
        View.Extent extent = View.extent(ring.corners(), turnRad);
        double ratio = StrictMath.max(
                extent.width() / (widthMm - 2 * NAMED_MM), extent.height() / (SQUARE_HIGH_MM - 2 * LABELLED_MM));
        Scale scale = new Scale(ratio, "");
        DrawingBuilder sketch = new DrawingBuilder(
                widthMm, StrictMath.max(LEAST_SQUARE_MM, scale.paper(extent.height()) + 2 * LABELLED_MM));
        Spot upperLeft = new Spot(
                (widthMm - scale.paper(extent.width())) / 2, (sketch.heightMm() - scale.paper(extent.height())) / 2);
        View view = View.of(scale, turnRad, extent, upperLeft);
        List<Spot> spots = view.at(ring);
        sketch.shape(spots, Pen.BOLD, null);
        for (Diagonal diagonal : order.diagonals()) {
            sketch.line(Pen.CENTRE, spots.get(diagonal.from()), spots.get(diagonal.to()));
        }
        for (int i = 0; i < spots.size(); i++) {
            sketch.label(
                    f.text(BenchMessage.BOX_CORNER.of(i + 1)),
                    spots.get(i),
                    TextSize.NORMAL,
                    TypeFace.BOLD,
                    Tone.BLACK);
        }
        return sketch.finish(f.text(BenchMessage.STEP_CORNERS.of(step.number())));
    }

    private Drawing standing(AssemblyStep step) {
        List<Piece> shown = new ArrayList<>();
        for (Piece piece : order.bench().box().pieces()) {
            if (standing.contains(piece.label()) || step.pieces().contains(piece.label())) {
                shown.add(piece);
            }
        }
        Drawing drawing = new BoxPicture(order.bench().box(), turnRad, widthMm, heightMm)
                .draw(shown, step.pieces(), f.text(BenchMessage.STEP_STANDING.of(step.number(), step.kind())));
        standing.addAll(step.pieces());
        return drawing;
    }
}
