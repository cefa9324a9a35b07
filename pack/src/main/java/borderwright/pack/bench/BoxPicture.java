package borderwright.pack.bench;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.Tone;
import java.util.ArrayList;
import java.util.List;

/**
 * Pieces of a box seen from above a corner, drawn from the farthest to the nearest.
 *
 * <p>A parallel view: the eye looks along {@code away} on the plan and down by a fixed angle. What was added last is shaded.
 */
final class BoxPicture {
    private static final double TURN_RAD = StrictMath.toRadians(25);
    private static final double DOWN_RAD = StrictMath.toRadians(32);
    private static final double MARGIN_MM = 1.5;

    private final double widthMm;
    private final double mostHighMm;
    private final Point right;
    private final Point away;
    private final Spot low;
    private final Spot high;

    /**
     * The frame is that of the whole box, so that all its pictures agree.
     *
     * @param planRad how far plans are turned anticlockwise: the box is seen from the lower edge of a plan
     */
    BoxPicture(Box box, double planRad, double widthMm, double mostHighMm) {
        this.widthMm = widthMm;
        this.mostHighMm = mostHighMm;
        // What runs to the right on the plan.
        Point along = new Point(StrictMath.cos(planRad), -StrictMath.sin(planRad));
        double c = StrictMath.cos(TURN_RAD);
        double s = StrictMath.sin(TURN_RAD);
        this.right = along.times(c).plus(along.left().times(s));
        this.away = right.left();
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (Piece piece : box.pieces()) {
            Prism solid = piece.place();
            for (Point p : solid.plan().corners()) {
                for (double z : new double[] {solid.bottomMm(), solid.topMm()}) {
                    Spot spot = seen(p, z);
                    x0 = StrictMath.min(x0, spot.x());
                    x1 = StrictMath.max(x1, spot.x());
                    y0 = StrictMath.min(y0, spot.y());
                    y1 = StrictMath.max(y1, spot.y());
                }
            }
        }
        this.low = new Spot(x0, y0);
        this.high = new Spot(x1, y1);
    }

    /** x to the right, y upwards, in millimetres of the box. */
    private Spot seen(Point p, double z) {
        return new Spot(p.dot(right), z * StrictMath.cos(DOWN_RAD) + p.dot(away) * StrictMath.sin(DOWN_RAD));
    }

    Drawing draw(List<Piece> shown, List<String> added, String says) {
        double ratio = StrictMath.max(
                (high.x() - low.x()) / (widthMm - 2 * MARGIN_MM), (high.y() - low.y()) / (mostHighMm - 2 * MARGIN_MM));
        DrawingBuilder sketch = new DrawingBuilder(widthMm, (high.y() - low.y()) / ratio + 2 * MARGIN_MM);
        double left = (widthMm - (high.x() - low.x()) / ratio) / 2;
        List<Prism> solids = shown.stream().map(Piece::place).toList();
        for (int i : new StackOrder(solids, away).farthestFirst()) {
            boolean isNew = added.contains(shown.get(i).label());
            for (List<Spot> face : faces(solids.get(i))) {
                List<Spot> onPaper = new ArrayList<>();
                for (Spot spot : face) {
                    onPaper.add(
                            new Spot(left + (spot.x() - low.x()) / ratio, MARGIN_MM + (high.y() - spot.y()) / ratio));
                }
                sketch.shape(onPaper, isNew ? Pen.FINE : Pen.HAIR, isNew ? Tone.LIGHT : Tone.WHITE);
            }
        }
        return sketch.finish(says);
    }

    /** The sides that face the eye, then the top. */
    private List<List<Spot>> faces(Prism solid) {
        List<List<Spot>> faces = new ArrayList<>();
        Ring ring = solid.plan();
        for (int i = 0; i < ring.size(); i++) {
            Point outward = ring.direction(i).left().times(-1);
            if (outward.dot(away) < 0) {
                faces.add(List.of(
                        seen(ring.corner(i), solid.bottomMm()),
                        seen(ring.corner(i + 1), solid.bottomMm()),
                        seen(ring.corner(i + 1), solid.topMm()),
                        seen(ring.corner(i), solid.topMm())));
            }
        }
        faces.add(ring.corners().stream().map(p -> seen(p, solid.topMm())).toList());
        return faces;
    }
}
