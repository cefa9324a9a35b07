package borderwright.engine.strength.bracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestTerms;
import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.strength.BoxStrength;
import borderwright.engine.strength.Cure;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.StrengthTerms;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeastCureTest {
    private static final StrengthTerms TERMS = TestTerms.usual(Footprints.SECTIONS, UnitSystem.METRIC);
    private static final BuildSpec RULES = Footprints.rules("larch 25 x 150", "batten 47 x 50", CornerStyle.LAPPED);
    private static final BuildMeans MEANS = Footprints.means(45, Map.of("larch 25 x 150", 3000.0));

    /** By volume of wood and number of fixings. */
    private static double cost(Box box) {
        return box.pieces().stream()
                        .mapToDouble(p -> p.place().volumeMm3() * 1e-6)
                        .sum()
                + box.fixings().stream().mapToDouble(f -> 0.1 * f.count()).sum();
    }

    private static CureAnswer find(FootprintPlan plan) {
        return LeastCure.find(plan, RULES, MEANS, TERMS, LeastCureTest::cost, Looks.UNHEARD);
    }

    @ParameterizedTest
    @CsvSource({"1200, 450", "1200, 300", "1800, 450", "2400, 300"})
    void whatIsFoundHoldsAndNothingCheaperOfTheSameKindDoes(double lengthMm, double heightMm) {
        FootprintPlan plan = Footprints.run(lengthMm, 600, heightMm);
        CureAnswer answer = find(plan);
        Cure cure = answer.cheapest().orElseThrow();

        assertThat(answer.end()).isEqualTo(SearchEnd.WHOLE);
        StrengthReport report = BoxStrength.check(answer.box().orElseThrow(), TERMS);
        assertThat(report.holds()).isTrue();
        assertThat(cure.bowMm()).isCloseTo(report.worstBowMm(), within(1e-9));
        boolean footed = false;
        Bracings all = new Bracings(plan, heightMm, 150, footed, Optional.empty());
        for (int ties = 0; ties < all.classes(); ties++) {
            for (BracingScheme scheme : all.of(ties)) {
                Box box = BoxBuilder.build(plan, RULES, MEANS, scheme);
                if (cost(box) < cure.cost() - 1e-9) {
                    assertThat(BoxStrength.check(box, TERMS).holds())
                            .as(scheme.toString())
                            .isFalse();
                }
            }
        }
    }

    private static CureAnswer findWithin(long steps, FootprintPlan plan) {
        return LeastCure.find(plan, RULES, MEANS, TERMS, LeastCureTest::cost, Looks.UNHEARD.within(steps));
    }

    /** At the least work with which anything is found, that stands and holds, and it is known that there may be cheaper ones. */
    @Test
    void aSearchThatIsCutShortSaysSoAndKeepsTheBestSoFar() {
        FootprintPlan plan = Footprints.run(1200, 600, 450);
        CureAnswer whole = find(plan);
        long tooLittle = 0;
        long enough = 1 << 20;
        while (enough - tooLittle > 1) {
            long between = (tooLittle + enough) / 2;
            CureAnswer answer = findWithin(between, plan);
            assertThat(answer.tried()).isLessThanOrEqualTo(whole.tried());
            if (answer.cheapest().isPresent()) {
                enough = between;
            } else {
                assertThat(answer.end()).as("%d steps", between).isEqualTo(SearchEnd.CUT_SHORT);
                tooLittle = between;
            }
        }

        CureAnswer first = findWithin(enough, plan);
        assertThat(first.end()).isEqualTo(SearchEnd.CUT_SHORT);
        assertThat(first.tried()).isPositive();
        assertThat(first.cheapest().orElseThrow().holds()).isTrue();
        assertThat(first.cheapest().orElseThrow().cost())
                .isGreaterThanOrEqualTo(whole.cheapest().orElseThrow().cost());
    }

    @Test
    void aSearchWithoutWorkLooksAtNothing() {
        CureAnswer answer = LeastCure.find(
                Footprints.run(2400, 600, 300), RULES, MEANS, TERMS, LeastCureTest::cost, Looks.UNHEARD.within(0));

        assertThat(answer.tried()).isZero();
        assertThat(answer.cheapest()).isEmpty();
        assertThat(answer.end()).isEqualTo(SearchEnd.CUT_SHORT);
    }

    @Test
    void tiesLowDownAreFoundWhereThoseNearTheRimDoNotHold() {
        Cure cure = find(Footprints.run(1200, 600, 450)).cheapest().orElseThrow();

        assertThat(cure.scheme().tieBelowRimMm()).isGreaterThan(150);
        assertThat(English.METRIC.text(cure.words()))
                .contains("1 tie")
                .contains("below the rim")
                .contains("2 braces");
    }

    @Test
    void aLowShortBoxNeedsNothing() {
        Cure cure = find(Footprints.run(700, 600, 150)).cheapest().orElseThrow();

        assertThat(English.METRIC.text(cure.words())).contains("no ties and no braces");
    }

    @Test
    void thickerBoardsAndAHigherFloorAreAlternativesWithTheirCostAndBow() {
        FootprintPlan plan = Footprints.run(1800, 600, 450);
        CureAnswer answer = LeastCure.withAlternatives(
                plan, RULES, MEANS, TERMS, LeastCureTest::cost, GroundSurface.BARE_EARTH, Looks.UNHEARD);

        assertThat(answer.alternatives()).anyMatch(c -> c.walls().equals("treated 47 x 200"));
        assertThat(answer.alternatives())
                .anyMatch(c -> English.METRIC.text(c.words()).contains("floor"));
        assertThat(answer.alternatives())
                .anyMatch(c -> English.METRIC.text(c.words()).startsWith("posts and braces of post 75 x 100"));

        assertThat(answer.all())
                .hasSizeGreaterThan(2)
                .allMatch(Cure::holds)
                .isSortedAccordingTo((a, b) -> Double.compare(a.cost(), b.cost()));
        assertThat(answer.cheapest().orElseThrow().walls()).isEqualTo("larch 25 x 150");
    }

    @Test
    void bearersStandAsCloseAsTheFloorNeeds() {
        FootprintPlan flat = Footprints.run(1800, 600, 450);
        assertThat(LeastCure.withFloorThatHolds(flat, RULES, MEANS, TERMS)).isSameAs(RULES);

        FootprintPlan floored = Footprints.plan(flat.outline(), List.of(), 450, 100, false);
        BuildSpec closer = LeastCure.withFloorThatHolds(floored, RULES, MEANS, TERMS);
        double spacing = closer.floor().bearerSpacing().orElseThrow().mm();

        assertThat(spacing).isLessThan(500);
        assertThat(floorUse(floored, closer)).isLessThanOrEqualTo(1);
        assertThat(floorUse(floored, RULES.withBearerSpacing(Length.ofMm(500)))).isGreaterThan(1);
    }

    private static double floorUse(FootprintPlan plan, BuildSpec rules) {
        return BoxStrength.floorUse(BoxBuilder.build(plan, rules, MEANS, Bracings.BARE), TERMS);
    }

    @Test
    void spacingsThatAreWishedAreKeptAndTiesLieAsDeepAsHoldsBest() {
        BuildSpec requested =
                Footprints.rules("larch 25 x 150", "batten 47 x 50", CornerStyle.LAPPED, Length.ofMm(600));
        FootprintPlan plan = Footprints.run(1200, 600, 450);
        Cure cure = LeastCure.asRequested(plan, requested, MEANS, TERMS, LeastCureTest::cost, Looks.UNHEARD)
                .orElseThrow();

        assertThat(cure.holds()).isTrue();
        assertThat(cure.scheme().tieSpacingMm()).isEqualTo(600);
        assertThat(cure.scheme().tieBelowRimMm()).isGreaterThan(150);
    }

    @ParameterizedTest
    @CsvSource({"1500, 500, 300", "2400, 900, 300", "1800, 900, 450", "3000, 700, 300"})
    void noSideKeepsBracesThatItCanDoWithout(double lengthMm, double depthMm, double heightMm) {
        FootprintPlan plan = Footprints.run(lengthMm, depthMm, heightMm);
        Cure cure = find(plan).cheapest().orElseThrow();
        for (int side = 0; side < 4; side++) {
            Box fewer = BoxBuilder.build(plan, RULES, MEANS, cure.scheme().withoutBraces(side));
            if (cost(fewer) < cure.cost() - 1e-9) {
                assertThat(BoxStrength.check(fewer, TERMS).holds())
                        .as("without those of side " + side)
                        .isFalse();
            }
        }
    }

    @Test
    void postsInTheGroundAreAnAlternativeWhereItCanBeDug() {
        BuildSpec stout = RULES.withUprights("post 75 x 100");
        FootprintPlan plan = Footprints.run(1500, 600, 300);
        CureAnswer dug = LeastCure.withAlternatives(
                plan, stout, MEANS, TERMS, LeastCureTest::cost, GroundSurface.BARE_EARTH, Looks.UNHEARD);
        CureAnswer paved = LeastCure.withAlternatives(
                plan, stout, MEANS, TERMS, LeastCureTest::cost, GroundSurface.PAVING, Looks.UNHEARD);

        assertThat(dug.alternatives())
                .anyMatch(c -> English.METRIC.text(c.words()).contains("into the ground in concrete"));
        assertThat(paved.alternatives())
                .noneMatch(c -> English.METRIC.text(c.words()).contains("into the ground"));
    }

    @Test
    void whereNoBracingHoldsNothingIsFoundAndThickerBoardsStillMay() {
        // A tie from front to back leaves long ends alone.
        FootprintPlan plan = Footprints.run(1200, 2000, 450);
        CureAnswer answer = LeastCure.withAlternatives(
                plan, RULES, MEANS, TERMS, LeastCureTest::cost, GroundSurface.BARE_EARTH, Looks.UNHEARD);

        assertThat(answer.cheapest()).isEmpty();
        assertThat(answer.box()).isEmpty();
        assertThat(answer.tried()).isGreaterThan(2);
    }
}
