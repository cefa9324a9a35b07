package borderwright.engine.strength.box;

import static borderwright.engine.strength.box.Planters.BARE;
import static borderwright.engine.strength.box.Planters.FILL;
import static borderwright.engine.strength.box.Planters.MATERIALS;
import static borderwright.engine.strength.box.Planters.run;
import static borderwright.engine.strength.box.Planters.scheme;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.strength.frame.Balance;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.loads.BoxLoads;
import borderwright.engine.strength.loads.LoadCase;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BoxFrameTest {
    private static FrameAnswer lasting(BoxFrame frame) {
        return frame.frame().solve(BoxLoads.lasting(frame, FILL).lasting(), frame.crept());
    }

    private static List<BowLine> bows(Box box) {
        BoxFrame frame = BoxFrame.of(box, MATERIALS, FILL);
        return BowLineFinder.of(frame, lasting(frame));
    }

    private static double worst(List<BowLine> lines, int side, int course) {
        return lines.stream()
                .filter(line -> line.side() == side && (course == 0 || line.course() == course))
                .mapToDouble(line -> line.greatest().outMm())
                .max()
                .orElseThrow();
    }

    static Stream<Box> boxes() {
        return Stream.of(
                run(BARE, 1200, 450),
                run(scheme(600, 600, 250), 1200, 450),
                run(scheme(400, 400, 200), 2400, 450),
                run(scheme(600, 600, 200), 3600, 300, 1200, 2400),
                run(scheme(500, 500, 60), 4200, 150, 2000));
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void forcesAreInBalanceInEveryCase(Box box) {
        BoxFrame frame = BoxFrame.of(box, MATERIALS, FILL);
        for (LoadCase one : BoxLoads.all(frame, FILL, 1000)) {
            Balance balance = frame.frame()
                    .solve(one.factored(1.35, 1.5), frame.forStrength(one.age()))
                    .balance();
            assertThat(balance.force().length()).isLessThan(1e-9 * balance.size());
            assertThat(balance.moment().length()).isLessThan(1e-9 * balance.size() * 1000);
            assertThat(balance.unbalanced()).isLessThan(1e-9 * balance.size() * 1000);
            assertThat(balance.loose()).as("what rests on nothing real").isLessThan(1e-4 * balance.size());
        }
    }

    @Test
    void aMirroredBoxAnswersMirrored() {
        // Laps turn like a pinwheel, whose mirror image no box has.
        List<BowLine> box = bows(mitred(1100));
        List<BowLine> mirrored = bows(mitred(1900));
        int[] mirroredSide = {0, 3, 2, 1};
        for (int side = 0; side < 4; side++) {
            for (int course = 1; course <= 3; course++) {
                assertThat(worst(mirrored, mirroredSide[side], course))
                        .isCloseTo(worst(box, side, course), within(1e-6));
            }
        }
        assertThat(worst(box, 0, 1)).isGreaterThan(0.5);
    }

    private static Box mitred(double dividerAt) {
        return BoxBuilder.build(
                Footprints.run(3000, 600, 450, dividerAt),
                Footprints.rules("larch 25 x 150", "batten 47 x 50", CornerStyle.MITRED),
                Footprints.means(45, Map.of("larch 25 x 150", 3000.0)),
                scheme(500, 500, 250));
    }

    @Test
    void aBoxOfOneShapeTurnedAnywhereAnswersAlike() {
        assertThat(worst(bows(run(BARE, 1200, 450)), 0, 1))
                .isCloseTo(worst(bows(run(BARE, 1200, 450)), 2, 1), within(1e-6));
    }

    @Test
    void looseBracesShareLoadAndSupportNothing() {
        List<BowLine> bare = bows(run(BARE, 1800, 450));
        List<BowLine> braced = bows(run(scheme(450, 0, 75), 1800, 450));
        double mean = (worst(bare, 0, 1) + worst(bare, 0, 2) + worst(bare, 0, 3)) / 3;
        // However stiff, uprights that stand on nothing can only make all courses move alike, or along a slanting line.
        assertThat(worst(braced, 0, 0)).isGreaterThan(mean).isLessThan(1.01 * worst(bare, 0, 0));
        double bracedMean = (worst(braced, 0, 1) + worst(braced, 0, 2) + worst(braced, 0, 3)) / 3;
        assertThat(bracedMean)
                .as("the sum of what the courses carry is what it was")
                .isCloseTo(mean, within(0.03 * mean));
    }

    @Test
    void tiesHoldWhatBracesAloneDoNot() {
        double loose = worst(bows(run(scheme(600, 0, 75), 1800, 450)), 0, 0);
        double tied = worst(bows(run(scheme(600, 600, 250), 1800, 450)), 0, 0);
        assertThat(tied).isLessThan(loose / 8);
    }

    @Test
    void splittingTheBarsConverges() {
        Box box = run(scheme(600, 600, 250), 1800, 450);
        Map<Double, Double> bowByLength = new TreeMap<>();
        for (double longest : new double[] {400, 200, 100, 50}) {
            BoxFrame frame = new FrameOfBox(box, MATERIALS, FILL, 0, FoundationSoil.CLAY, longest).build();
            bowByLength.put(longest, worst(BowLineFinder.of(frame, lasting(frame)), 0, 0));
        }
        double finest = bowByLength.getOrDefault(50.0, 0.0);
        assertThat(bowByLength.get(100.0)).isCloseTo(finest, within(0.002 * finest));
        assertThat(worst(bows(box), 0, 0)).as("as drawn").isCloseTo(finest, within(0.005 * finest));
    }

    @Test
    void theFillInOnePlanterPushesItsDividerOnly() {
        Box box = run(scheme(600, 600, 250), 2400, 450, 1200);
        BoxFrame frame = BoxFrame.of(box, MATERIALS, FILL);
        List<LoadCase> cases = BoxLoads.all(frame, FILL, 0);
        LoadCase first = cases.stream().filter(c -> !c.isFull()).findFirst().orElseThrow();
        Board divider = frame.dividers().get(0);
        FrameAnswer oneSided = frame.frame().solve(first.factored(1, 1), frame.emptied(frame.crept(), first.empty()));
        double moment =
                Math.abs(oneSided.member(divider.parts().get(0).member()).momentAboutZ(275));
        double even =
                Math.abs(lasting(frame).member(divider.parts().get(0).member()).momentAboutZ(275));
        // A beam between hinges under what half-way down the bottom course pushes: 345 mm deep, 16 kN/m3, K0 0.5.
        double push = 0.5 * 16 * 0.345 * 1e-3 * 150;
        assertThat(moment).isCloseTo(push * 575 * 575 / 8, within(0.12 * push * 575 * 575 / 8));
        assertThat(even).isLessThan(0.01 * moment);
    }

    @Test
    void frictionUnderTheBottomCourseHoldsSomeOfIt() {
        Box box = run(BARE, 1200, 450);
        BoxFrame sliding = BoxFrame.of(box, MATERIALS, FILL);
        BoxFrame rubbing = BoxFrame.of(box, MATERIALS, FILL, 0.4, FoundationSoil.CLAY);
        double without = worst(BowLineFinder.of(sliding, lasting(sliding)), 0, 1);
        double with = worst(BowLineFinder.of(rubbing, lasting(rubbing)), 0, 1);
        assertThat(with).isLessThan(without).isGreaterThan(0.8 * without);
    }

    @Test
    void anyBoxThatCanBeBuiltHasAnAnswer() {
        for (int seed = 0; seed < 60; seed++) {
            BoxFrame frame = BoxFrame.of(Planters.random(new SplittableRandom(seed)), MATERIALS, FILL);
            if (!frame.isEmpty()) {
                assertThat(lasting(frame).isMechanism()).as("seed " + seed).isFalse();
            }
        }
    }
}
