package borderwright.engine.survey;

import static borderwright.engine.survey.SeededSurveysTest.report;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.Candidate;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Seeded surveys with a slip of the tape, and without one. */
class SeededSlipsTest {
    @Nested
    class Slips {
        /** How a planted slip fares. */
        private enum Fate {
            NAMED,
            LISTED,
            MISSED,
            WRONGLY_ACCUSED,
            LISTED_WITHOUT,
            REFUSED
        }

        @Test
        void aHundredSurveysWithOneSlipEach() {
            int[] fates = new int[Fate.values().length];
            for (long seed = 1000; seed < 1100; seed++) {
                SeededSurvey survey = new SeededSurvey(seed, 1).withSlip();
                fates[fate(survey).ordinal()]++;
            }
            StringBuilder told = new StringBuilder("100 surveys with one slip each, seeds 1000 to 1099:");
            for (Fate fate : Fate.values()) {
                told.append(' ').append(fate).append(' ').append(fates[fate.ordinal()]);
            }
            System.out.println(told);
            assertThat(fates[Fate.NAMED.ordinal()]).as(told.toString()).isGreaterThanOrEqualTo(75);
            assertThat(fates[Fate.NAMED.ordinal()] + fates[Fate.LISTED.ordinal()])
                    .as(told.toString())
                    .isGreaterThanOrEqualTo(93);
            assertThat(fates[Fate.WRONGLY_ACCUSED.ordinal()])
                    .as(told.toString())
                    .isLessThanOrEqualTo(1);
        }

        private Fate fate(SeededSurvey survey) {
            if (!(BorderSurvey.adjust(survey.notes()) instanceof SurveyAnswer.Adjusted adjusted)) {
                return Fate.REFUSED;
            }
            SurveyReport report = adjusted.report();
            List<Candidate> candidates = report.suspects().candidates();
            boolean among = candidates.stream()
                    .anyMatch(c -> report.readings().get(c.reading()).where().equals(survey.slipWhere()));
            if (candidates.isEmpty()) {
                return Fate.MISSED;
            }
            if (report.suspects().named()) {
                return among ? Fate.NAMED : Fate.WRONGLY_ACCUSED;
            }
            return among ? Fate.LISTED : Fate.LISTED_WITHOUT;
        }

        @Test
        void aHundredSoundSurveysRaiseFewAlarms() {
            int alarms = 0;
            int accused = 0;
            int refused = 0;
            for (long seed = 2000; seed < 2100; seed++) {
                SurveyAnswer answer = BorderSurvey.adjust(new SeededSurvey(seed, 1).notes());
                if (answer instanceof SurveyAnswer.Adjusted adjusted) {
                    alarms += adjusted.report().suspects().candidates().isEmpty() ? 0 : 1;
                    accused += adjusted.report().suspects().named() ? 1 : 0;
                } else {
                    refused++;
                }
            }
            String told = "100 sound surveys at risk 0.05, seeds 2000 to 2099: alarms " + alarms + ", accused "
                    + accused + ", refused as open to two shapes or weak " + refused;
            System.out.println(told);
            // binomial with 0.05 to 0.06: more than 13 of 100 has a chance under one in a thousand
            assertThat(alarms).as(told).isLessThanOrEqualTo(13);
            assertThat(accused).as(told).isLessThanOrEqualTo(1);
            assertThat(refused).as(told).isLessThanOrEqualTo(8);
        }
    }
}
