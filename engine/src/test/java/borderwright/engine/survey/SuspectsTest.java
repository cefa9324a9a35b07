package borderwright.engine.survey;

import static borderwright.engine.survey.SurveyExamples.border;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.Candidate;
import borderwright.engine.survey.checks.SurveyReport.Reading;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SuspectsTest {

    private static String what(SurveyReport report, Candidate candidate) {
        return English.METRIC.text(report.readings().get(candidate.reading()).what());
    }

    /** A five-cornered border with three redundant tapes, all but one reading exact to the millimetre. */
    private static SurveyExamples fiveCorners(double sideCd) {
        return border("A B C D E")
                .tape("A B", 4000, 3)
                .tape("B C", 3000, 3)
                .tape("C D", sideCd, 3)
                .tape("D E", 2678, 3)
                .tape("E A", 3041, 3)
                .tape("A C", 5000, 3)
                .tape("A D", 5220, 3)
                .tape("B D", 5220, 3)
                .tape("B E", 5025, 3)
                .tape("C E", 4000, 3);
    }

    @Nested
    class Named {
        @Test
        void withRedundancyTheSlipIsNamedWithTheValueTheRestImplies() {
            // true: C (4000, 3000), D (2000, 4822), so C-D is 2705
            SurveyReport report = fiveCorners(2750).adjusted().report();
            SurveyReport sound = fiveCorners(2705).adjusted().report();
            assertThat(sound.suspects()).isEqualTo(SurveyReport.Suspects.NONE);
            assertThat(report.suspects().named()).isTrue();
            assertThat(report.suspects().separating()).isEmpty();
            Candidate named = report.suspects().candidates().get(0);
            assertThat(what(report, named)).isEqualTo("tape C-D");
            assertThat(named.implied()).isCloseTo(2705, within(3.0));
            assertThat(named.slip().map(English.METRIC::text))
                    .contains("perhaps two digits were swapped: 2750 mm for 2705 mm");
            assertThat(report.globalTest().orElseThrow().agrees()).isFalse();
            assertThat(English.METRIC.text(report.next().what())).isEqualTo("tape C-D once more");
            assertThat(English.METRIC.text(report.next().why()))
                    .isEqualTo("would correct the reading that the others contradict");
        }

        @Test
        void theNamedReadingIsSetAsideSoThatTheBorderIsNotBentByIt() {
            SurveyAnswer.Adjusted bad = fiveCorners(3705).adjusted();
            SurveyAnswer.Adjusted sound = fiveCorners(2705).adjusted();
            Reading reading = bad.report().readings().get(2);
            assertThat(reading.residual()).isCloseTo(-1000, within(5.0));
            assertThat(bad.report().suspects().candidates().get(0).slip().map(English.METRIC::text))
                    .contains("perhaps it was read 1 m too long");
            for (int i = 0; i < 5; i++) {
                assertThat(bad.outline()
                                .ring()
                                .corner(i)
                                .distanceMm(sound.outline().ring().corner(i)))
                        .isLessThan(6);
            }
        }

        @Test
        void aLevelIsNamedToo() {
            SurveyReport report = border("A B C D")
                    .tape("A B", 4000, 3)
                    .tape("B C", 3000, 3)
                    .tape("C D", 4000, 3)
                    .tape("D A", 3000, 3)
                    .tape("A C", 5000, 3)
                    .tape("B D", 5000, 3)
                    .level("A", 0, 3)
                    .rise("A B", -96, 3)
                    .rise("B C", -109, 3)
                    .rise("C D", -113, 3)
                    .rise("D A", 218, 3)
                    .rise("A C", -205, 3)
                    .rise("B D", -222, 3)
                    .adjusted()
                    .report();
            Candidate named = report.suspects().candidates().get(0);
            assertThat(report.suspects().named()).isTrue();
            assertThat(what(report, named)).isEqualTo("rise D-A");
            assertThat(named.implied()).isCloseTo(318, within(2.0));
            assertThat(named.slip().map(English.METRIC::text)).contains("perhaps it was read 100 mm too low");
        }
    }

    @Nested
    class WithOneRedundancy {
        @Test
        void allNineLengthsOfALineAreCandidatesAndNoneIsAccused() {
            SurveyReport report = SurveyExamples.fence().adjusted().report();
            assertThat(report.redundancy()).isEqualTo(1);
            assertThat(report.suspects().named()).isFalse();
            assertThat(report.suspects().candidates()).hasSize(9);
            double[] implied = {9588, 1212, 1221, 1215, 1223, 1218, 1214, 1220, 1201};
            for (int i = 0; i < 9; i++) {
                Candidate candidate = report.suspects().candidates().get(i);
                assertThat(candidate.reading()).isEqualTo(i);
                assertThat(candidate.implied()).isCloseTo(implied[i], within(1e-6));
                assertThat(Math.abs(report.readings().get(i).normalised())).isCloseTo(17 / Math.sqrt(41), within(1e-6));
            }
            assertThat(English.METRIC.text(report.suspects().separating().orElseThrow()))
                    .startsWith("tape from ")
                    .contains(" is wrong. About ");
            assertThat(English.METRIC.text(report.next().why())).isEqualTo("would show which of 9 readings is wrong");
        }

        @Test
        void aMisreadWallIsAmongTheFourAndItsSlipIsSaid() {
            SurveyReport report = SurveyExamples.wedge().adjusted().report();
            assertThat(report.suspects().named()).isFalse();
            assertThat(report.suspects().candidates())
                    .extracting(c -> what(report, c))
                    .containsExactlyInAnyOrder("tape A-B", "tape B-C", "tape A-C", "angle A-B-C");
            Candidate misread = report.suspects().candidates().stream()
                    .filter(c -> what(report, c).equals("tape A-C"))
                    .findFirst()
                    .orElseThrow();
            assertThat(misread.implied()).isCloseTo(3966, within(0.5));
            assertThat(misread.slip().map(English.METRIC::text)).contains("perhaps 3.90 m was read for 3.96 m");
            Candidate gauge = report.suspects().candidates().stream()
                    .filter(c -> what(report, c).equals("angle A-B-C"))
                    .findFirst()
                    .orElseThrow();
            assertThat(gauge.implied()).isCloseTo(60.8, within(0.05));
        }

        @Test
        void theSeparatingMeasureForetellsWhatItWouldRead() {
            SurveyReport report = SurveyExamples.wedge().adjusted().report();
            assertThat(report.readings().stream().map(r -> English.METRIC.text(r.what())))
                    .containsExactly("tape A-B", "tape B-C", "tape A-C", "angle A-B-C");
            assertThat(English.METRIC.text(report.suspects().separating().orElseThrow()))
                    .isEqualTo(
                            "gauge angle at C between B and A. About 68.5 deg: reading 1 is wrong. About 72.4 deg: reading 2"
                                    + " is wrong. About 69.6 deg: one of readings 3 and 4 is wrong.");
        }

        @Test
        void takingTheMisreadWallAgainSettlesIt() {
            SurveyReport report =
                    SurveyExamples.wedge().tape("A C", 3962, 4).adjusted().report();
            assertThat(report.suspects().named()).isTrue();
            assertThat(report.suspects().candidates())
                    .extracting(c -> report.readings().get(c.reading()).where())
                    .containsExactly("survey.measures[2].reads");
        }
    }

    @Test
    void withoutRedundancyNothingIsSuspectedAndTheNextMeasureIsTheOneThatChecks() {
        SurveyReport report = border("A B C D")
                .tape("A B", 4000, 3)
                .tape("B C", 3000, 3)
                .tape("C D", 4000, 3)
                .tape("D A", 3000, 3)
                .tape("A C", 5000, 3)
                .adjusted()
                .report();
        assertThat(report.globalTest()).isEmpty();
        assertThat(report.suspects()).isEqualTo(SurveyReport.Suspects.NONE);
        assertThat(English.METRIC.text(report.next().what())).isEqualTo("tape from B to D");
        assertThat(English.METRIC.text(report.next().why()))
                .isEqualTo(
                        "would show a slip of 34 mm or more in tape A-B, which nothing checks yet; with it the survey is shown to hold");
    }

    @Test
    void theRiskIsThePersonsOwn() {
        SurveyReport strict = SurveyExamples.fence().risk(0.001).adjusted().report();
        assertThat(strict.globalTest().orElseThrow().limit()).isCloseTo(10.828, within(0.0005));
        assertThat(strict.suspects().candidates()).isEmpty();
    }

    @Test
    void sentencesInFeetAndInches() {
        SurveyAnswer answer = border("A B C D")
                .tape("A B", 304.8 * 12, 3)
                .tape("B C", 304.8 * 9, 3)
                .tape("C D", 304.8 * 12, 3)
                .tape("D A", 304.8 * 9, 3)
                .tape("A C", 304.8 * 15, 3)
                .tape("B D", 304.8 * 16, 3)
                .answer(UnitSystem.IMPERIAL);
        List<Candidate> candidates =
                SurveyExamples.adjusted(answer).report().suspects().candidates();
        assertThat(candidates)
                .extracting(c -> c.slip().map(English.IMPERIAL::text).orElse(""))
                .contains("perhaps it was read 1 ft too long");
    }
}
