package borderwright.pack.sheets.site;

import borderwright.engine.plan.Plan;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * Every planter with boxes to tick, for the wall of the workshop.
 *
 * @param plan the plan
 */
public record WallChartSheet(Plan plan) implements Sheet {
    @Override
    public String title() {
        return "Wall chart";
    }

    @Override
    public Part part() {
        return Part.GARDEN;
    }

    /** The steps that each planter goes through. */
    public List<String> steps() {
        List<String> steps = new ArrayList<>();
        boolean hard = plan.garden().ground().surface().isHard();
        steps.add("set out");
        steps.add(hard ? "feet" : "dug");
        if (!hard && plan.site().ground().gravelM3() > 0) {
            steps.add("gravel");
        }
        steps.add("cut");
        if (plan.site().filling().finish().coats() > 0) {
            steps.add("brushed");
        }
        steps.add("gaps measured");
        steps.add("built");
        steps.add("ties in");
        if (plan.site().filling().liner().isPresent()) {
            steps.add("lined");
        }
        steps.add("filled");
        steps.add("planted");
        return steps;
    }
}
