package borderwright.engine.survey.checks;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.checks.SurveyReport.Candidate;
import borderwright.engine.survey.checks.SurveyReport.Reading;
import java.util.List;
import java.util.Optional;

/** A report's disagreement as one problem: the reading named as wrong, or the likeliest of several. */
public final class SurveyDisagreement {
    private SurveyDisagreement() {}

    /** The problem; empty when the readings agree. */
    public static Optional<Problem> of(SurveyReport survey) {
        List<Candidate> candidates = survey.suspects().candidates();
        if (candidates.isEmpty()) {
            return Optional.empty();
        }
        Candidate first = candidates.get(0);
        Reading reading = survey.readings().get(first.reading());
        Message read = DisagreementMessage.value(reading.measured(), reading.unit());
        Message implied = DisagreementMessage.value(first.implied(), reading.unit());
        if (survey.suspects().named()) {
            Message message = first.slip()
                    .map(slip -> DisagreementMessage.SURVEY_DISAGREES_BY_A_SLIP.of(reading.what(), read, implied, slip))
                    .orElseGet(() -> DisagreementMessage.SURVEY_DISAGREES.of(reading.what(), read, implied));
            return Optional.of(new Problem(reading.where(), message));
        }
        int count = candidates.size();
        Message separating = survey.suspects().separating().orElseThrow();
        Message message = first.slip()
                .map(slip -> DisagreementMessage.SURVEY_DISAGREES_SOMEWHERE_BY_A_SLIP.of(
                        count, reading.what(), read, implied, slip, separating))
                .orElseGet(() -> DisagreementMessage.SURVEY_DISAGREES_SOMEWHERE.of(
                        count, reading.what(), read, implied, separating));
        return Optional.of(new Problem("survey.measures", message));
    }
}
