package borderwright.engine.survey;

import borderwright.engine.problem.Problem;
import borderwright.engine.survey.checks.SurveyReport;
import java.util.List;

/** What a survey comes to: an adjusted border, or the reason why it cannot be fixed. */
public sealed interface SurveyAnswer {

    /** A border whose every corner is fixed; it may still hold measures that disagree. */
    record Adjusted(Outline outline, SurveyReport report) implements SurveyAnswer {}

    /**
     * A border that the measures do not fix.
     *
     * @param problems what is not fixed, each with the measure that would fix it
     */
    record NotFixed(List<Problem> problems) implements SurveyAnswer {
        public NotFixed {
            problems = List.copyOf(problems);
        }
    }
}
