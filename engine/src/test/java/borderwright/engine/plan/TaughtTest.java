package borderwright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestBoxes;
import borderwright.engine.TestGarden;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.given.GivenFirstPlanter;
import borderwright.engine.garden.resolve.SupplyResolver;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthMessage;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.Verdict;
import borderwright.engine.strength.rules.RuleSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Three boxes of which the first was built; they are reckoned to bow 4, 5 and 8 mm in the end, and may bow 10. */
class TaughtTest {
    private static final List<Box> BOXES = List.of(box("F1", 0), box("F2", 2000), box("F3", 4000));
    private static final List<StrengthReport> STRENGTH = List.of(report("F1", 4), report("F2", 5), report("F3", 8));

    private static Box box(String name, double from) {
        return TestBoxes.box(name, Ring.rectangle(from, 0, from + 1500, 600), 0, 450, 0);
    }

    private static StrengthReport report(String box, double bowMm) {
        boolean holds = true;
        return StrengthReport.builder()
                .box(box)
                .verdict(new Verdict(Verdict.Kind.HOLDS, List.of(StrengthMessage.BOX_NOT_BUILT.of())))
                .rules(RuleSet.EUROCODE.name())
                .bowLimitMm(10)
                .sides(List.of(new SideBow(0, "a", bowMm, 2, 700, 1, holds)))
                .lines(List.of())
                .checks(List.of())
                .takenForGranted(List.of())
                .guidance(StrengthMessage.STRENGTH_GUIDANCE.of())
                .build();
    }

    private static Taught taught(@Nullable FirstPlanter first) {
        Garden garden = TestGarden.with(null, null);
        return new Taught(first == null ? garden : TestGarden.taught(garden, first));
    }

    private static FirstPlanter bows(double mm) {
        return SupplyResolver.firstPlanter(
                GivenFirstPlanter.builder().bulge(Length.ofMm(mm)).build());
    }

    @Test
    void nothingSaidTeachesNothing() {
        assertThat(taught(null).notes(BOXES, STRENGTH)).isEmpty();
        assertThat(taught(null).unmet(BOXES, STRENGTH)).isEmpty();
    }

    @Test
    void lessBowThanPredictedIsNoProofYet() {
        assertThat(taught(bows(3)).notes(BOXES, STRENGTH))
                .extracting(English.METRIC::text)
                .containsExactly("The first planter, of box F1, bulges 3 mm. We predicted 4 mm in the end; so far the"
                        + " prediction stands.");
        assertThat(taught(bows(3)).unmet(BOXES, STRENGTH)).isEmpty();
    }

    @Test
    void moreBowSpeaksAgainstEveryBoxThatWouldPassItsLimitAtThatRate() {
        // 5 instead of 4: a quarter more; 8 becomes 10, which is just allowed.
        assertThat(taught(bows(5)).unmet(BOXES, STRENGTH)).isEmpty();
        assertThat(taught(bows(5.1)).unmet(BOXES, STRENGTH)).hasSize(1).allSatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("first-planter-bulges");
            assertThat(problem.where()).isEqualTo("first planter.bulge");
            assertThat(problem.what(English.METRIC)).contains("F3 would bulge more than 10 mm");
        });
        assertThat(taught(bows(9)).unmet(BOXES, STRENGTH))
                .extracting(p -> p.what(English.METRIC))
                .allMatch(what -> what.contains("2 boxes, F2 first, would bulge"));
    }

    @Test
    void withoutAReportForEachBoxNothingIsCompared() {
        assertThat(taught(bows(9)).unmet(BOXES, STRENGTH.subList(0, 2))).isEmpty();
    }

    @Test
    void kerfAndUnusableBoardsAreSaidWithTheirFigures() {
        FirstPlanter first = SupplyResolver.firstPlanter(GivenFirstPlanter.builder()
                .kerf(Length.ofMm(3.2))
                .boards(12)
                .unusable(3)
                .build());
        // 3 of 12 beside what 20 boards would have shown at nothing: 3 of 32.
        assertThat(taught(first).notes(BOXES, STRENGTH))
                .extracting(English.METRIC::text)
                .containsExactly(
                        "Boards are cut with the measured kerf, 3.2 mm.",
                        "3 of 12 boards were unusable: the plan allows for 9.4 %, not 0.0 %.");
    }
}
