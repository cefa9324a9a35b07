package borderwright.engine.buildup.uprights;

import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Nook;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.FaceMessage;
import borderwright.engine.buildup.parts.Piece.Rip;
import borderwright.engine.buildup.parts.SawBench;
import borderwright.engine.garden.SectionSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * What may stand in a corner so that both of its boards are held, best first.
 *
 * <ol>
 *   <li>A square upright, where the corner is so near to square that its second face stands off by no more than 1 mm.
 *   <li>An upright with one edge ripped to the corner, where both faces and the wood behind them then offer room for
 *       screws, the section is not treated (a rip bares untreated wood), and a saw at hand rips at that tilt.
 *   <li>Two uprights, one on each board, as close into the corner as they come. At a square corner they touch and are
 *       screwed to each other.
 * </ol>
 *
 * <p>See docs/decisions/0031.
 */
public final class NookUprights {
    /** Taken up by pulling the screws tight; less than the tolerance of planed boards. */
    private static final double STAND_OFF_MM = 1;

    /** Five diameters of a 5 mm screw, for one in the middle of it (common practice, no source). */
    private static final double LEAST_BEARING_MM = 25;

    private final SawBench bench;

    public NookUprights(SawBench bench) {
        this.bench = bench;
    }

    /**
     * Choices in order of preference, each a set of uprights that stand together.
     *
     * @param first the corner seen from one of its faces
     * @param second the same corner seen from the other face
     */
    List<List<UprightPlan>> choices(Nook first, Nook second, SectionSpec section) {
        Stance stance = Stance.of(section);
        List<List<UprightPlan>> choices = new ArrayList<>();
        boolean square = StrictMath.abs(stance.depthMm() * UprightPlan.cot(first.angle())) <= STAND_OFF_MM;
        if (stance.isStout() && square) {
            choices.add(List.of(
                    UprightPlan.onBothFaces(first.rectangle(first.clearMm(stance.depthMm()), stance), section)));
        }
        Stance ripStance = first.angle() > StrictMath.PI / 2 ? stance.wide() : stance;
        if (!square && canRip(first, ripStance, section)) {
            choices.add(List.of(UprightPlan.ripped(first.ripped(ripStance), section, rip(first, section, ripStance))));
        }
        choices.add(pair(first, second, section, stance, square));
        choices.add(List.of(alone(first, section, stance)));
        choices.add(List.of(alone(second, section, stance)));
        return choices;
    }

    private boolean canRip(Nook nook, Stance stance, SectionSpec section) {
        UprightPlan.Bearing bearing = nook.bearing(stance);
        double lean = stance.depthMm() * UprightPlan.cot(nook.angle());
        return stance.isStout()
                && bearing.wallMm() >= LEAST_BEARING_MM
                && bearing.otherMm() >= LEAST_BEARING_MM
                && lean <= stance.faceMm() - 3
                && !section.isTreated()
                && bench.canRip(ripDeg(nook.angle()));
    }

    private Rip rip(Nook nook, SectionSpec section, Stance stance) {
        double tilt = ripDeg(nook.angle());
        double left = nook.bearing(stance).wallMm();
        return new Rip(
                tilt,
                nook.angle() < StrictMath.PI / 2
                        ? FaceMessage.RIP_KEEPING_A_FACE.of(tilt, section.name(), stance.faceMm())
                        : FaceMessage.RIP_LEAVING_PART.of(tilt, section.name(), left, stance.faceMm()));
    }

    /** The second upright stands in the corner, the first clear of it. */
    private static List<UprightPlan> pair(
            Nook first, Nook second, SectionSpec section, Stance stance, boolean bearsOnBoth) {
        double depth = stance.depthMm();
        double angle = first.angle();
        double secondFrom = second.clearMm(depth);
        double firstFrom = angle >= StrictMath.PI / 2
                ? depth * StrictMath.sin(angle)
                : depth / StrictMath.sin(angle)
                        + StrictMath.min(depth, stance.faceMm() * StrictMath.sin(angle)) * UprightPlan.cot(angle);
        return List.of(
                new UprightPlan(first.rectangle(firstFrom, stance), section, null, bearsOnBoth),
                new UprightPlan(second.rectangle(secondFrom, stance), section, null, bearsOnBoth));
    }

    private static UprightPlan alone(Nook nook, SectionSpec section, Stance stance) {
        return UprightPlan.onOneFace(nook.rectangle(nook.clearMm(stance.depthMm()), stance), section);
    }

    private static double ripDeg(double angle) {
        return StrictMath.abs(90 - StrictMath.toDegrees(angle));
    }
}
