package borderwright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.message.English;
import borderwright.engine.message.Message;
import borderwright.engine.strength.Cure;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthMessage;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class StrengthStageTest {
    private static final Message SOME_WORDS = StrengthMessage.STRENGTH_GUIDANCE.of();

    private static StrengthReport report(List<Cure> cures) {
        boolean holds = false;
        return StrengthReport.builder()
                .box("F1")
                .verdict(new Verdict(Verdict.Kind.DOES_NOT_HOLD, List.of(SOME_WORDS)))
                .rules(SOME_WORDS)
                .bowLimitMm(10)
                .sides(List.of(new SideBow(0, "a", 30, 2, 700, 1, holds)))
                .lines(List.of())
                .checks(List.of())
                .takenForGranted(List.of())
                .guidance(SOME_WORDS)
                .build()
                .withCures(cures);
    }

    private static Cure cure() {
        return new Cure(SOME_WORDS, "larch", new BracingScheme(600, 600, 200, List.of()), 12, 5, 0.5);
    }

    private static String advice(StrengthReport report) {
        return English.METRIC.text(StrengthStage.cure(report));
    }

    @Test
    void nothingIsCalledTheCheapestWhereTheSearchWasCutShort() {
        assertThat(advice(report(List.of(cure())))).contains("cheapest bracing or change that holds");
        assertThat(advice(report(List.of(cure())).withSearchCutShort(7)))
                .contains("within the work allowed")
                .contains("need not be the cheapest");
        assertThat(advice(report(List.of()))).doesNotContain("work allowed");
        assertThat(advice(report(List.of()).withSearchCutShort(7))).contains("within the work allowed, none holds");
    }

    @Test
    void theReportTellsAfterHowManyWaysTheSearchEnded() {
        assertThat(report(List.of()).isSearchCutShort()).isFalse();
        StrengthReport cutShort = report(List.of()).withSearchCutShort(7);

        assertThat(cutShort.isSearchCutShort()).isTrue();
        assertThat(cutShort.notSettled()).containsExactly(StrengthMessage.BRACING_SEARCH_CUT_SHORT.of("F1", 7));
        assertThat(cutShort.verdict()).isEqualTo(report(List.of()).verdict());
    }
}
