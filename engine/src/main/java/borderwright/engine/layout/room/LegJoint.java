package borderwright.engine.layout.room;

import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.List;

/**
 * Where two legs of a run meet: the lines at their backs and at their fronts cross there.
 *
 * @param before the leg that ends here
 * @param after the leg that starts here
 * @param depthMm depth of the planters, mm
 * @param angle angle of the border inside, radians, in (0, 2 pi)
 * @param back where the back lines cross
 * @param front where the front lines cross
 */
public record LegJoint(Leg before, Leg after, double depthMm, double angle, Point back, Point front) {
    /** Turns below this are straight: the crossing of two nearly parallel lines is not to be trusted. */
    private static final double STRAIGHT = 1e-6;

    public static LegJoint of(Leg before, Leg after, double depthMm) {
        double turn = before.line().turnTo(after.line());
        Point back = after.at(0, after.backMm());
        Point front = after.at(0, after.backMm() + depthMm);
        if (Math.abs(turn) > STRAIGHT) {
            Line first = before.back();
            Line second = after.back();
            back = first.meet(second).orElse(back);
            front = first.offset(depthMm).meet(second.offset(depthMm)).orElse(front);
        }
        return new LegJoint(before, after, depthMm, StrictMath.PI - turn, back, front);
    }

    public boolean isConvex() {
        return angle < StrictMath.PI;
    }

    public double degrees() {
        return StrictMath.toDegrees(angle);
    }

    /** Last station of the leg before at which a box may end square: neither its back nor its front goes past. */
    public double lastBeforeMm() {
        return Math.min(before.stationMm(back), before.stationMm(front));
    }

    /** First station of the leg after at which a box may begin square. */
    public double firstAfterMm() {
        return Math.max(after.stationMm(back), after.stationMm(front));
    }

    /** Half of what a wing's front and back differ by: depth / (2 tan(angle / 2)), mm. */
    public double spareMm() {
        return Math.abs(before.stationMm(back) - before.stationMm(front)) / 2;
    }

    /** How far each of two square ends stands back from the joint so that they are a distance apart, mm. */
    public double pullBackMm(double gapMm) {
        return gapMm / (2 * StrictMath.sin(angle / 2));
    }

    /** Least length of a corner planter's wings, mm: its dividers then stand the least edge apart at their near ends too. */
    public double leastWingMm(double leastEdgeMm) {
        return Math.max(leastEdgeMm, leastEdgeMm / (2 * StrictMath.sin(angle / 2)));
    }

    /** The corner with its least wings, as two convex halves. */
    public List<Ring> leastHalves(double leastEdgeMm) {
        double wing = leastWingMm(leastEdgeMm);
        return halves(lastBeforeMm() - wing, firstAfterMm() + wing);
    }

    /**
     * The corner between two square cuts, as two convex halves that meet on the bisector.
     *
     * @param fromMm station on the leg before
     * @param toMm station on the leg after
     */
    public List<Ring> halves(double fromMm, double toMm) {
        return List.of(
                new Ring(List.of(place(before, fromMm, 0), back, front, place(before, fromMm, depthMm))),
                new Ring(List.of(back, place(after, toMm, 0), place(after, toMm, depthMm), front)));
    }

    /** The place at a station of a leg and a distance in front of its back line. */
    public static Point place(Leg leg, double stationMm, double depthMm) {
        return leg.at(stationMm, leg.backMm() + depthMm);
    }
}
