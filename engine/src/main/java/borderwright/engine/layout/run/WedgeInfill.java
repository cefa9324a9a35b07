package borderwright.engine.layout.run;

import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.plan.SidePlan.Role;
import borderwright.engine.layout.room.LegJoint;
import java.util.ArrayList;
import java.util.List;

/**
 * The planter that fills the wedge between two square ends.
 *
 * <p>Inside a corner (angle below 180 degrees) it has five sides: two along the edges, two against its neighbours' ends
 * and a straight front across the corner, long enough to garden from. Its angles are 90 at the back, the corner's own,
 * and 180 less half of it in front: all within the least and greatest for every corner from 45 degrees. Round a
 * projecting corner from 225 degrees it is a kite between the two ends, with angles of the corner less 180 and 360 less
 * the corner; below that the kite would be too sharp, and it goes round the corner with two short wings.
 *
 * @param outline its sides in order
 * @param parts convex parts that make it up
 * @param nose the blunt nose in an acute corner
 * @param lastBeforeMm last station of the leg before for its neighbour's end
 * @param firstAfterMm first station of the leg after for its neighbour's end
 */
public record WedgeInfill(
        List<BoxSide> outline, List<Ring> parts, Nose nose, double lastBeforeMm, double firstAfterMm) {
    public WedgeInfill {
        outline = List.copyOf(outline);
        parts = List.copyOf(parts);
    }

    /** Front wanted for an infill planter inside a corner: the width of a person's hands at work (no source). */
    private static final double FRONT_MM = 300;

    /** Below this angle the kite's back would be sharper than the least angle. */
    private static final double KITE_DEG = 180 + LayoutRules.LEAST_ANGLE_DEG;

    static WedgeInfill at(LegJoint joint, RunTerms terms) {
        double gapMm = terms.betweenMm();
        LayoutRules rules = terms.rules();
        if (joint.isConvex()) {
            return acrossTheCorner(joint, terms);
        }
        double sideMm = joint.depthMm() * Math.abs(1 / StrictMath.tan(joint.angle() / 2)) - gapMm;
        boolean kite = joint.degrees() >= KITE_DEG
                && sideMm >= rules.leastEdgeMm()
                && kiteBackMm(joint, gapMm) >= rules.leastEdgeMm();
        return kite ? kite(joint, gapMm) : roundTheCorner(joint, gapMm, rules);
    }

    private static WedgeInfill acrossTheCorner(LegJoint joint, RunTerms terms) {
        LayoutRules rules = terms.rules();
        double gapMm = terms.betweenMm();
        double half = joint.angle() / 2;
        double front = Math.max(FRONT_MM, rules.leastEdgeMm());
        double wing = Math.max(
                front / (2 * StrictMath.sin(half)), rules.leastEdgeMm() - joint.depthMm() / StrictMath.tan(half));
        double from = joint.lastBeforeMm() - wing;
        double to = joint.firstAfterMm() + wing;
        Point backBefore = LegJoint.place(joint.before(), from, 0);
        Point backAfter = LegJoint.place(joint.after(), to, 0);
        Point frontAfter = LegJoint.place(joint.after(), to, joint.depthMm());
        Point frontBefore = LegJoint.place(joint.before(), from, joint.depthMm());
        double tip = joint.back().distanceMm(frontBefore.towards(frontAfter, 0.5));
        Nose nose = Nose.of(joint, tip, backBefore.distanceMm(joint.back()), terms);
        List<BoxSide> outline = new ArrayList<>();
        outline.add(new BoxSide(backBefore, Role.BACK, joint.before()));
        if (nose.isCut()) {
            outline.add(new BoxSide(nose.before(), Role.BACK, null));
        }
        outline.add(new BoxSide(nose.after(), Role.BACK, joint.after()));
        outline.add(new BoxSide(backAfter, Role.END, null));
        outline.add(new BoxSide(frontAfter, Role.FRONT, null));
        outline.add(new BoxSide(frontBefore, Role.END, null));
        return new WedgeInfill(outline, List.of(BoxSide.ring(outline)), nose, from - gapMm, to + gapMm);
    }

    private static WedgeInfill roundTheCorner(LegJoint joint, double gapMm, LayoutRules rules) {
        double from = joint.lastBeforeMm() - rules.leastEdgeMm();
        double to = joint.firstAfterMm() + rules.leastEdgeMm();
        List<BoxSide> outline = List.of(
                new BoxSide(LegJoint.place(joint.before(), from, 0), Role.BACK, joint.before()),
                new BoxSide(joint.back(), Role.BACK, joint.after()),
                new BoxSide(LegJoint.place(joint.after(), to, 0), Role.END, null),
                new BoxSide(LegJoint.place(joint.after(), to, joint.depthMm()), Role.FRONT, null),
                new BoxSide(joint.front(), Role.FRONT, null),
                new BoxSide(LegJoint.place(joint.before(), from, joint.depthMm()), Role.END, null));
        return new WedgeInfill(outline, joint.halves(from, to), new Nose(joint, 0), from - gapMm, to + gapMm);
    }

    private static WedgeInfill kite(LegJoint joint, double gapMm) {
        double from = joint.lastBeforeMm() + gapMm;
        double to = joint.firstAfterMm() - gapMm;
        List<BoxSide> outline = List.of(
                new BoxSide(kiteBack(joint, gapMm), Role.END, null),
                new BoxSide(LegJoint.place(joint.after(), to, joint.depthMm()), Role.FRONT, null),
                new BoxSide(joint.front(), Role.FRONT, null),
                new BoxSide(LegJoint.place(joint.before(), from, joint.depthMm()), Role.END, null));
        return new WedgeInfill(
                outline,
                List.of(BoxSide.ring(outline)),
                new Nose(joint, 0),
                joint.lastBeforeMm(),
                joint.firstAfterMm());
    }

    private static Point kiteBack(LegJoint joint, double gapMm) {
        Line before = joint.before().line().squareAt(joint.lastBeforeMm() + gapMm);
        Line after = joint.after().line().squareAt(joint.firstAfterMm() - gapMm);
        return before.meet(after).orElse(joint.back());
    }

    /** Length of the kite's sides at its back, mm; negative when the gap takes all of it. */
    private static double kiteBackMm(LegJoint joint, double gapMm) {
        Point front = LegJoint.place(joint.before(), joint.lastBeforeMm() + gapMm, joint.depthMm());
        return front.minus(kiteBack(joint, gapMm))
                .dot(joint.before().direction().left());
    }
}
