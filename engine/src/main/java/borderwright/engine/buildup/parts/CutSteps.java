package borderwright.engine.buildup.parts;

import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.Length;

/**
 * The steps to which lengths are cut. A piece is rounded down, so that none grows into another: it is shorter than its place
 * by less than two steps, an outer board by less than one.
 *
 * <p>Angles go by the saw, up to its next step: a greater angle takes more off at the short point and leaves the long point
 * where it is, so that mitres meet at their long points and gape by no more than {@code width * tan(step)} at the others.
 *
 * <p>See docs/decisions/0034.
 *
 * @param length the step of lengths
 */
public record CutSteps(Length length) {
    /** As fine as lengths are kept, angles as they come: for designs that nobody cuts. */
    public static final CutSteps FINEST = new CutSteps(new Length(1));

    /** An angle so little above a step is that step, in steps. */
    private static final double SAME = 1e-4;

    private static final double SAME_MM = 1e-6;

    public boolean isFinest() {
        return length.ticks() <= 1;
    }

    /** The greatest length in whole steps that is no longer; as it comes where the steps are the finest. */
    public Length down(double mm) {
        if (isFinest()) {
            return Length.ofMm(mm);
        }
        long steps = (long) StrictMath.floor((mm + SAME_MM) / length.mm());
        return new Length(steps * length.ticks());
    }

    /**
     * What a piece between two outer boards leaves besides, mm: these draw it in by what they are rounded down, by
     * what their thickness lacks to whole steps where the box is square and its sides are whole, by a step where it is not.
     */
    public double slackMm(double wallMm, FootprintPlan box) {
        if (isFinest()) {
            return 0;
        }
        double step = length.mm();
        double lacks = StrictMath.ceil(wallMm / step - SAME_MM) * step - wallMm;
        return box.isRectangle() ? StrictMath.max(0, lacks) : step;
    }

    /** The least angle in whole steps of a saw that is no less, degrees; as it comes where the steps are the finest. */
    double upDeg(double degrees, double stepDeg) {
        return isFinest() ? degrees : StrictMath.ceil(degrees / stepDeg - SAME) * stepDeg;
    }
}
