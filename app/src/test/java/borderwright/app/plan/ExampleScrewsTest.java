package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every screw in the walls of the examples as a line in space, among the pieces that it holds. */
class ExampleScrewsTest {
    /** Pieces stand off each other by 1 mm or so before the screws draw them together. */
    private static final double GAP_MM = 3;

    /** Between the axes of two screws, in diameters of the thicker (common practice, no source). */
    private static final double LEAST = 1.5;

    private record Screw(Joint joint, ScrewLine line, double diameterMm) {}

    @ParameterizedTest
    @MethodSource("borderwright.app.plan.ExamplePlans#names")
    void noScrewMeetsAnotherAndEachIsCountedAndLiesInWood(String example) {
        int count = 0;
        for (Box box : ExamplePlans.of(example).boxes()) {
            List<Screw> screws = screws(box);
            assertThat(near(screws)).as(box.plan().name()).isEmpty();
            for (Screw screw : screws) {
                double outside = 0;
                for (double depth = 0.5; depth <= screw.line.lengthMm(); depth++) {
                    outside += isInWood(box, screw.line, depth) ? 0 : 1;
                }
                assertThat(outside).as("mm out of wood, " + screw).isLessThanOrEqualTo(GAP_MM);
            }
            assertThat(tally(box)).as(box.plan().name()).isEmpty();
            count += screws.size();
        }
        assertThat(count).as("screws").isGreaterThan(100);
    }

    private static List<Screw> screws(Box box) {
        List<Screw> screws = new ArrayList<>();
        for (Joint joint : box.joints()) {
            Box.Fixing fixing =
                    box.fixings().stream().filter(joint::isOf).findFirst().orElseThrow();
            if (fixing.diameterMm() > 0) {
                joint.screws().forEach(line -> screws.add(new Screw(joint, line, fixing.diameterMm())));
            }
        }
        return screws;
    }

    private static List<String> near(List<Screw> screws) {
        List<String> near = new ArrayList<>();
        for (int i = 0; i < screws.size(); i++) {
            for (int k = i + 1; k < screws.size(); k++) {
                Screw a = screws.get(i);
                Screw b = screws.get(k);
                double thick = Math.max(a.diameterMm, b.diameterMm);
                if (a.line.nearestMm(b.line) < LEAST * thick) {
                    near.add(a + " and " + b);
                }
            }
        }
        return near;
    }

    private static boolean isInWood(Box box, ScrewLine line, double depthMm) {
        double z = line.zAt(depthMm);
        for (Piece piece : box.pieces()) {
            if (z >= piece.place().bottomMm()
                    && z <= piece.place().topMm()
                    && piece.place().plan().contains(line.planAt(depthMm), 0.05)) {
                return true;
            }
        }
        return false;
    }

    /** What the tally of fixings in the walls counts otherwise than the joints do. */
    private static Map<String, Integer> tally(Box box) {
        Map<String, Integer> off = new TreeMap<>();
        box.fixings().stream()
                .filter(fixing -> fixing.hold() != Box.Hold.OTHER)
                .forEach(fixing -> off.merge(fixing.hold() + " " + fixing.item(), fixing.count(), Integer::sum));
        box.joints()
                .forEach(joint -> off.merge(
                        joint.hold() + " " + joint.item(), -joint.screws().size(), Integer::sum));
        off.values().removeIf(difference -> difference == 0);
        return off;
    }
}
