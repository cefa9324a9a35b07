package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.BenchUpright;
import borderwright.engine.assembly.Span;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.assembly.order.AssemblyOrder;
import borderwright.engine.assembly.order.AssemblyStep;
import borderwright.engine.assembly.order.Diagonal;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A small picture for each step: a wall on the bench from above, the corners with their diagonals, or the box so far. */
final class StepPictures {
    private static final double MARGIN_MM = 3;

    private final AssemblyOrder order;
    private final PrintedFigures f;
    private final double widthMm;
    private final double heightMm;
    private final Set<String> standing = new HashSet<>();

    StepPictures(AssemblyOrder order, PrintedFigures f, double widthMm, double heightMm) {
        this.order = order;
        this.f = f;
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
        Point along = ring.direction(0);
        List<Point> turned = ring.corners().stream()
                .map(p -> new Point(p.dot(along), p.dot(along.left())))
                .toList();
        double x0 = turned.stream().mapToDouble(Point::xMm).min().orElseThrow();
        double x1 = turned.stream().mapToDouble(Point::xMm).max().orElseThrow();
        double y0 = turned.stream().mapToDouble(Point::yMm).min().orElseThrow();
        double y1 = turned.stream().mapToDouble(Point::yMm).max().orElseThrow();
        double ratio = StrictMath.max((x1 - x0) / (widthMm - 18), (y1 - y0) / (heightMm - 14));
        DrawingBuilder sketch = new DrawingBuilder(widthMm, StrictMath.max(24, (y1 - y0) / ratio + 14));
        double left = (widthMm - (x1 - x0) / ratio) / 2;
        double low = (sketch.heightMm() + (y1 - y0) / ratio) / 2;
        List<Spot> spots = turned.stream()
                .map(p -> new Spot(left + (p.xMm() - x0) / ratio, low - (p.yMm() - y0) / ratio))
                .toList();
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
        Drawing drawing = new BoxPicture(order.bench().box(), widthMm, heightMm)
                .draw(shown, step.pieces(), f.text(BenchMessage.STEP_STANDING.of(step.number(), step.kind())));
        standing.addAll(step.pieces());
        return drawing;
    }
}
