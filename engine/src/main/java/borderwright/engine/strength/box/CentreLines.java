package borderwright.engine.strength.box;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.geometry.Point;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.strength.frame.Vector;
import java.util.List;

/**
 * The lines half-way through the walls, on which all bars of the model lie.
 *
 * <p>See docs/decisions/0040.
 */
final class CentreLines {
    final List<SideFrame> sides;
    final double wallMm;
    private final double halfMm;

    CentreLines(FootprintPlan plan, double wallMm) {
        sides = SideFrame.of(plan.outline());
        this.wallMm = wallMm;
        halfMm = wallMm / 2;
    }

    double startMm(int side) {
        return sides.get(side).innerStart(halfMm);
    }

    double endMm(int side) {
        return sides.get(side).innerEnd(halfMm);
    }

    Point at(int side, double alongMm) {
        return sides.get(side).at(alongMm, halfMm);
    }

    /** The corner at the start of a side. */
    Point corner(int side) {
        return at(side, startMm(side));
    }

    /** Where a straight line meets a side's middle line, as a distance along the side. */
    double crossingMm(int side, Point through, Point along) {
        SideFrame frame = sides.get(side);
        double speed = along.dot(frame.inwards());
        double reach = (halfMm - frame.w(through)) / speed;
        return frame.s(through.plus(along.times(reach)));
    }

    Vector outward(int side) {
        return level(sides.get(side).inwards().times(-1));
    }

    Vector along(int side) {
        return level(sides.get(side).along());
    }

    static Vector level(Point direction) {
        return new Vector(direction.xMm(), direction.yMm(), 0);
    }

    static Vector at(Point place, double heightMm) {
        return new Vector(place.xMm(), place.yMm(), heightMm);
    }
}
