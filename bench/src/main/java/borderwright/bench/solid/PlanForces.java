package borderwright.bench.solid;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.box.ScrewGroup;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.loads.BoxLoads;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.worked.Working;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the plan's own frame puts on the screws under the fill for good, after creep, without factors: the side that is
 * compared with.
 *
 * @param screws one of each joint: the plan takes them as alike
 * @param groups the joints
 */
record PlanForces(List<ScrewForce> screws, Map<String, ScrewGroup> groups) {
    static PlanForces of(Box box, StrengthTerms terms) {
        BoxFrame frame = BoxFrame.of(box, terms.materials(), terms.fill(), terms.bedFriction(), terms.postGround());
        FrameAnswer answer =
                frame.frame().solve(BoxLoads.lasting(frame, terms.fill()).lasting(), frame.crept());
        List<ScrewForce> screws = new ArrayList<>();
        Map<String, ScrewGroup> groups = new HashMap<>();
        for (ScrewGroup group : frame.holds()) {
            double square = group.turn() < 0 ? 0 : answer.springForce(group.turn()) / group.leverMm();
            String joint = ScrewLinks.name(group.kind(), group.fixed(), group.receiver());
            groups.put(joint, group);
            screws.add(new ScrewForce(
                    joint,
                    Math.hypot(answer.springForce(group.across()) / group.count(), square),
                    answer.springForce(group.along()) / group.count()));
        }
        return new PlanForces(screws, groups);
    }

    /** How much of a screw is used, of 1, by the plan's own rule set under a load for good. */
    double used(ScrewForce screw) {
        ScrewGroup group = groups.get(screw.joint());
        if (group == null) {
            throw new IllegalArgumentException("the plan has no joint " + screw.joint());
        }
        return group.joint()
                .utilisation(
                        group.count() * screw.shearN(),
                        group.count() * Math.max(0, screw.pullN()),
                        group.count(),
                        LoadDuration.PERMANENT,
                        Working.SILENT);
    }
}
