package borderwright.pack.sheets;

import borderwright.engine.plan.Plan;
import borderwright.pack.paper.Drawing;

/**
 * What was measured and how well it agrees.
 *
 * @param plan the plan
 * @param drawing sketch with readings and uncertainties
 */
public record SurveySheet(Plan plan, Drawing drawing) implements Sheet {
    @Override
    public String title() {
        return "Survey sheet";
    }

    @Override
    public Part part() {
        return Part.WORKING;
    }
}
