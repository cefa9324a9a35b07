package borderwright.engine.strength;

import static borderwright.engine.strength.box.Planters.BARE;
import static borderwright.engine.strength.box.Planters.run;
import static borderwright.engine.strength.box.Planters.scheme;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestTerms;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.vocabulary.ground.SoilPush;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.box.Planters;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.worked.Check;
import borderwright.engine.strength.worked.SheetLine;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BoxStrengthTest {
    private static final StrengthTerms TERMS = TestTerms.usual(Footprints.SECTIONS, UnitSystem.METRIC);

    private static StrengthReport check(Box box) {
        return BoxStrength.check(box, TERMS);
    }

    @Test
    void aLongThinSideWithoutTiesDoesNotHoldAndSaysByHowMuch() {
        StrengthReport report = check(run(BARE, 2400, 450));

        assertThat(report.verdict().kind()).isEqualTo(Verdict.Kind.DOES_NOT_HOLD);
        assertThat(English.METRIC.text(report.verdict().message()))
                .contains("side a")
                .contains("course 1")
                .contains("limit 10 mm");
        assertThat(report.sides().get(0).holds()).isFalse();
        assertThat(report.worstBowMm()).isGreaterThan(100);
    }

    @Test
    void aBoxTiedLowDownHoldsWithNumbers() {
        StrengthReport report = check(run(scheme(400, 400, 200), 1200, 450));

        assertThat(report.verdict().kind()).isEqualTo(Verdict.Kind.HOLDS);
        assertThat(English.METRIC.text(report.verdict().message()))
                .contains(" mm at most")
                .contains("%");
        assertThat(report.holds()).isTrue();
        assertThat(report.sides()).hasSize(4).allMatch(SideBow::holds);
        assertThat(report.worstUse()).isBetween(0.2, 1.0);
    }

    @Test
    void theBowOfASideIsTheGreatestOfItsLines() {
        StrengthReport report = check(run(scheme(600, 600, 250), 1800, 450));

        for (SideBow side : report.sides()) {
            double greatest = report.lines().stream()
                    .filter(line -> line.side() == side.side())
                    .mapToDouble(line -> line.greatest().outMm())
                    .max()
                    .orElseThrow();
            assertThat(side.finalMm()).isCloseTo(Math.max(0, greatest), within(1e-12));
        }
        assertThat(report.lines()).extracting(BowLine::course).contains(1, 2, 3);
    }

    @Test
    void everyCheckCanBeFollowedToItsFigure() {
        StrengthReport report = check(run(scheme(600, 600, 250), 2400, 450, 1200));

        assertThat(report.checks())
                .extracting(Check::what)
                .contains(
                        CheckKind.BENDING.of(),
                        CheckKind.SHEAR.of(),
                        CheckKind.SCREWS.of(),
                        CheckKind.TENSION.of(),
                        CheckKind.GROUND.of());
        for (Check check : report.checks()) {
            assertThat(English.METRIC.text(check.clause())).isNotBlank();
            assertThat(English.METRIC.text(check.loading())).isNotBlank();
            List<SheetLine> lines = check.working();
            if (lines.get(lines.size() - 1).symbol().equals("use")) {
                assertThat(lines.get(lines.size() - 1).value().orElseThrow())
                        .isCloseTo(check.utilisation(), within(1e-12));
            }
        }
        assertThat(report.checks()).isSortedAccordingTo((a, b) -> Double.compare(b.utilisation(), a.utilisation()));
    }

    @Test
    void itSaysWhatWasTakenForGrantedAndThatItIsGuidance() {
        StrengthReport report = check(run(BARE, 1200, 300));

        assertThat(report.takenForGranted())
                .anyMatch(s -> English.METRIC.text(s).contains("no grade is stamped: assumed to be C14"));
        assertThat(report.takenForGranted())
                .anyMatch(s -> English.METRIC.text(s).contains("16.0 kN/m3"));
        assertThat(English.METRIC.text(report.guidance()))
                .contains("not a licensed engineer's design")
                .contains("Ask one");
    }

    @Test
    void aStrapIsCheckedByItsScrewsOrByWhatItsMakerDeclares() {
        Ring skew = new Ring(List.of(new Point(0, 0), new Point(700, 0), new Point(0, 900)));
        Box box = Planters.box(Footprints.plan(skew, 150), BARE);
        assertThat(box.fixings())
                .anyMatch(f -> f.hold() == Box.Hold.CORNER_STRAP)
                .anyMatch(f -> f.hold() == Box.Hold.STRAP_TO_UPRIGHT && f.count() == 4);

        Check screws = strapCheck(check(box));
        assertThat(English.METRIC.text(screws.part())).contains("2 screw 4 x 30 in each leg");
        assertThat(English.METRIC.text(screws.clause())).isEqualTo("EN 1995-1-1 8.2.3");
        assertThat(screws.utilisation()).isBetween(0.01, 1.0);

        StrengthTerms declared = StrengthTerms.builder()
                .materials(TERMS.materials())
                .fill(TERMS.fill())
                .kneelingN(TERMS.kneelingN())
                .bowLimitMm(TERMS.bowLimitMm())
                .ground(TERMS.ground())
                .gravelMm(TERMS.gravelMm())
                .strapN(500)
                .build();
        assertThat(English.METRIC.text(
                        strapCheck(BoxStrength.check(box, declared)).clause()))
                .isEqualTo("declared by its maker");
    }

    private static Check strapCheck(StrengthReport report) {
        return report.checks().stream()
                .filter(c -> English.METRIC.text(c.part()).contains("straps"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anImperialGardenIsCheckedByTheNdsInItsOwnUnits() {
        StrengthReport report = BoxStrength.check(
                run(scheme(400, 400, 200), 1200, 450), TestTerms.usual(Footprints.SECTIONS, UnitSystem.IMPERIAL));

        assertThat(English.METRIC.text(report.rules())).startsWith("NDS 2018");
        assertThat(report.takenForGranted())
                .anyMatch(s -> English.IMPERIAL.text(s).contains("102 lb/ft3"));
        assertThat(English.IMPERIAL.text(report.verdict().message()))
                .contains(" in")
                .doesNotContain(" mm");
        assertThat(report.checks())
                .anyMatch(c -> English.METRIC.text(c.clause()).contains("NDS"));
    }

    @Test
    void theQuickAnswerIsTheReports() {
        for (Box box : List.of(run(scheme(400, 400, 200), 1200, 450), run(scheme(600, 600, 250), 1800, 450))) {
            StrengthReport report = check(box);
            double worst = Math.max(report.worstBowMm() / 10, report.worstUse());
            double quick =
                    BoxStrength.uses(box, TERMS, Budget.ofSteps(Long.MAX_VALUE)).worst();
            // A box that is over its limit is looked into no further than shows it.
            assertThat(quick).isCloseTo(worst, within(worst > 1 ? 0.06 * worst : 1e-9));
            assertThat(quick > 1).isEqualTo(worst > 1);
        }
    }

    @Test
    void whatTheCoarseModelRefusesTheFineOneRefusesToo() {
        int refused = 0;
        for (int seed = 0; seed < 60; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Box box = run(
                    scheme(random.nextDouble(300, 1500), random.nextDouble(300, 900), random.nextDouble(60, 260)),
                    random.nextDouble(600, 2400),
                    random.nextBoolean() ? 300 : 450);
            boolean quick =
                    BoxStrength.uses(box, TERMS, Budget.ofSteps(Long.MAX_VALUE)).worst() <= 1;
            assertThat(quick).as("seed " + seed).isEqualTo(check(box).holds());
            refused += quick ? 0 : 1;
        }
        assertThat(refused).isBetween(10, 50);
    }

    @Test
    void wetterHeavierOrHeapedSoilBowsMore() {
        Box box = run(scheme(600, 600, 250), 1500, 450);
        double plain = check(box).worstBowMm();
        StrengthTerms heaped = with(Fill.builder()
                .moistKnPerM3(16)
                .saturatedKnPerM3(19)
                .phi(TERMS.fill().phi())
                .push(TERMS.fill().push())
                .water(TERMS.fill().water())
                .heapedMm(150)
                .treadingKnPerM2(2)
                .belowRimMm(30)
                .build());
        StrengthTerms active = with(Fill.builder()
                .moistKnPerM3(16)
                .saturatedKnPerM3(19)
                .phi(TERMS.fill().phi())
                .push(SoilPush.ACTIVE)
                .water(TERMS.fill().water())
                .heapedMm(0)
                .treadingKnPerM2(2)
                .belowRimMm(30)
                .build());
        assertThat(BoxStrength.check(box, heaped).worstBowMm()).isGreaterThan(1.2 * plain);
        assertThat(BoxStrength.check(box, active).worstBowMm()).isLessThan(0.8 * plain);
    }

    private static StrengthTerms with(Fill fill) {
        return StrengthTerms.builder()
                .materials(TERMS.materials())
                .fill(fill)
                .kneelingN(TERMS.kneelingN())
                .bowLimitMm(TERMS.bowLimitMm())
                .bedFriction(TERMS.bedFriction())
                .ground(TERMS.ground())
                .gravelMm(TERMS.gravelMm())
                .strapN(TERMS.strapN())
                .build();
    }
}
