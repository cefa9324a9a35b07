package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.UnitSystem;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.View;
import java.util.Collection;
import java.util.List;

/** How far a plan is turned so that fronts look towards the reader and the longest side lies level. */
final class Turn {
    private Turn() {}

    /**
     * The same, but turned by a quarter more where that makes the drawing much larger: fronts that look every way have no side that must
     * be below. Radians anticlockwise.
     */
    static double largest(
            UnitSystem units, List<Box> boxes, Collection<Point> places, double roomWidthMm, double roomHeightMm) {
        double requested = towardsReader(boxes);
        double quarter = requested + StrictMath.PI / 2;
        double least = 1.6 * scale(units, places, quarter, roomWidthMm, roomHeightMm);
        return scale(units, places, requested, roomWidthMm, roomHeightMm) < least ? requested : quarter;
    }

    private static double scale(
            UnitSystem units, Collection<Point> places, double turn, double roomWidthMm, double roomHeightMm) {
        View.Extent extent = View.extent(places, turn);
        return Scale.fitting(units, extent.width(), extent.height(), roomWidthMm, roomHeightMm)
                .ratio();
    }

    /** Radians anticlockwise. */
    static double towardsReader(List<Box> boxes) {
        Point longest = new Point(1, 0);
        double lengthMm = 0;
        Point outwards = new Point(0, 0);
        for (Box box : boxes) {
            Ring ring = box.plan().outline();
            for (int i = 0; i < ring.size(); i++) {
                SidePlan.Role role = box.plan().sides().get(i).role();
                if (role == SidePlan.Role.FRONT) {
                    outwards = outwards.plus(ring.direction(i).left().times(-ring.sideMm(i)));
                }
                if (role != SidePlan.Role.END && ring.sideMm(i) > lengthMm + 1) {
                    lengthMm = ring.sideMm(i);
                    longest = ring.direction(i);
                }
            }
        }
        double turn = -StrictMath.atan2(longest.yMm(), longest.xMm());
        double away = outwards.xMm() * StrictMath.sin(turn) + outwards.yMm() * StrictMath.cos(turn);
        return away > 1 ? turn + StrictMath.PI : turn;
    }
}
