package borderwright.engine.layout.run;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.room.LegJoint;
import java.util.List;

/**
 * The blunt nose of a planter in an acute corner: square to the bisector, it cuts off the tip that cannot be reached.
 *
 * <p>The nose stands where reach ends, but never nearer to the front than the planter's depth, and no shorter than the
 * least edge; the backs of the wings keep the least edge too, and where that takes it, a part of the tip beyond reach
 * stays.
 *
 * @param joint the corner
 * @param cutMm how much of each wing's back it takes, mm; 0 for no nose
 */
public record Nose(LegJoint joint, double cutMm) {
    /** From this angle a corner's tip is no wedge: it is planted, and how far off it lies is reported. */
    private static final double ACUTE_DEG = 89.5;

    /**
     * The nose of a corner planter.
     *
     * @param tipMm distance of the corner from the planter's front, mm
     * @param wingBackMm length of each wing along its back, mm
     */
    public static Nose of(LegJoint joint, double tipMm, double wingBackMm, RunTerms terms) {
        double reached = Math.max(terms.reachMm(), terms.depthMm());
        if (joint.degrees() >= ACUTE_DEG || tipMm <= reached) {
            return new Nose(joint, 0);
        }
        double half = joint.angle() / 2;
        double least = terms.rules().leastEdgeMm();
        double leastCut = least / (2 * StrictMath.sin(half));
        double cut = Math.max((tipMm - reached) / StrictMath.cos(half), leastCut);
        double most = wingBackMm - least;
        return new Nose(joint, most < leastCut ? 0 : Math.min(cut, most));
    }

    public boolean isCut() {
        return cutMm > 0;
    }

    public Point before() {
        return joint.back().minus(joint.before().direction().times(cutMm));
    }

    public Point after() {
        return joint.back().plus(joint.after().direction().times(cutMm));
    }

    /** The tip that it leaves open. */
    public Ring tip() {
        return new Ring(List.of(before(), joint.back(), after()));
    }
}
