package borderwright.engine.strength.box;

import static borderwright.engine.strength.box.Planters.FILL;
import static borderwright.engine.strength.box.Planters.MATERIALS;
import static borderwright.engine.strength.box.Planters.run;
import static borderwright.engine.strength.box.Planters.scheme;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.Joint;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The strength model holds a box by the screws that its builder placed, and by no others. */
class DrivenScrewsTest {
    private static final Box BOX = run(scheme(600, 600, 200), 3600, 300, 1200, 2400);

    @Test
    void everyScrewOfWallsDividersAndTiesIsInTheModelOnce() {
        assertThat(counted(BOX)).isEqualTo(placed(BOX)).hasSize(3);
    }

    /** As where another screw leaves no room for a joint's second one. */
    @Test
    void aScrewThatIsNotPlacedHoldsNothing() {
        List<Joint> joints = new ArrayList<>();
        for (Joint joint : BOX.joints()) {
            boolean less = joint.hold() == Hold.DIVIDER_TO_UPRIGHT;
            joints.add(less ? only(joint, joint.screws().size() - 1) : joint);
        }
        Box box = with(joints);
        assertThat(counted(box)).isEqualTo(placed(box)).isNotEqualTo(placed(BOX));
    }

    @Test
    void aTieWithoutScrewsIsHeldByNoUpright() {
        List<Joint> joints = BOX.joints().stream()
                .filter(joint -> joint.hold() != Hold.TIE_TO_BRACE)
                .toList();
        BoxFrame frame = BoxFrame.of(with(joints), MATERIALS, FILL);
        assertThat(frame.holds()).noneMatch(group -> group.kind() == Hold.TIE_TO_BRACE);
        assertThat(frame.unheld()).extracting(message -> message.code()).contains(FrameMessage.END_WITHOUT_UPRIGHT);
    }

    private static Map<Hold, Integer> counted(Box box) {
        Map<Hold, Integer> counts = new TreeMap<>();
        BoxFrame.of(box, MATERIALS, FILL)
                .holds()
                .forEach(group -> counts.merge(group.kind(), group.count(), Integer::sum));
        return counts;
    }

    private static Map<Hold, Integer> placed(Box box) {
        Map<Hold, Integer> counts = new TreeMap<>();
        for (Joint joint : box.joints()) {
            if (List.of(Hold.WALL_TO_UPRIGHT, Hold.DIVIDER_TO_UPRIGHT, Hold.TIE_TO_BRACE)
                    .contains(joint.hold())) {
                counts.merge(joint.hold(), joint.screws().size(), Integer::sum);
            }
        }
        return counts;
    }

    private static Joint only(Joint joint, int screws) {
        return new Joint(
                joint.hold(),
                joint.use(),
                joint.item(),
                joint.side(),
                joint.through(),
                joint.into(),
                joint.screws().subList(0, screws));
    }

    private static Box with(List<Joint> joints) {
        return Box.builder()
                .plan(BOX.plan())
                .courses(BOX.courses())
                .pieces(BOX.pieces())
                .fixings(BOX.fixings())
                .joints(joints)
                .inside(BOX.inside())
                .soilDepthMm(BOX.soilDepthMm())
                .build();
    }
}
