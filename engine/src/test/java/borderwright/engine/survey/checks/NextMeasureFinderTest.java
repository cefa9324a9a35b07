package borderwright.engine.survey.checks;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.message.English;
import borderwright.engine.survey.SurveyExamples;
import org.junit.jupiter.api.Test;

class NextMeasureFinderTest {
    /** A strip along two edges: the tape that leaves least of the worst slip comes first, whatever it does for the corners. */
    @Test
    void theWorstSlipThatCouldPassComesFirst() {
        SurveyReport report = SurveyExamples.border("A B C")
                .strip(640)
                .tape("A B", 5420, 3)
                .tape("B C", 3905, 3)
                .tape("A C", 6615, 3)
                .angle("A B C", 88.5, 0.3)
                .offset("P", "A B", 2700, 0, LeftOrRight.LEFT, 2)
                .adjusted()
                .report();

        assertThat(English.METRIC.text(report.next().what())).isEqualTo("tape from C to P");
        assertThat(English.METRIC.text(report.next().why()))
                .isEqualTo("would show a slip of 46 mm or more in tape B-C, where one of 125 mm could pass now");
    }

    /** With every corner pinned by many tapes nothing weak is left: then the worst corner counts. */
    @Test
    void whereNoSlipDoesHarmTheWorstCornerCounts() {
        SurveyReport report = SurveyExamples.border("A B C D")
                .tape("A B", 4000, 3)
                .tape("A B", 4000, 3)
                .tape("B C", 3000, 3)
                .tape("B C", 3000, 3)
                .tape("C D", 4000, 3)
                .tape("C D", 4000, 3)
                .tape("D A", 3000, 3)
                .tape("D A", 3000, 3)
                .tape("A C", 5000, 3)
                .tape("B D", 5000, 3)
                .adjusted()
                .report();

        assertThat(report.verdict()).isEqualTo(SurveyReport.Verdict.SHOWN);
        assertThat(English.METRIC.text(report.next().why())).startsWith("would guard against a slip");
    }
}
