package borderwright.engine.survey.checks;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.message.English;
import borderwright.engine.survey.SurveyExamples;
import org.junit.jupiter.api.Test;

class NextMeasureFinderTest {
    /** A strip of 640 mm along a wall and a house: the next tape would bring the worst corner from 2.4 mm to about 2 mm. */
    @Test
    void aGainThatRoundsToNothingIsLeftOut() {
        SurveyReport report = SurveyExamples.border("A B C")
                .strip(640)
                .tape("A B", 5420, 3)
                .tape("B C", 3905, 3)
                .tape("A C", 6615, 3)
                .angle("A B C", 88.5, 0.3)
                .offset("P", "A B", 2700, 0, LeftOrRight.LEFT, 2)
                .adjusted()
                .report();

        assertThat(English.METRIC.text(report.next().what())).isEqualTo("tape from B to P");
        assertThat(English.METRIC.text(report.next().why()))
                .isEqualTo("would check 2 readings that nothing checks yet");
    }
}
