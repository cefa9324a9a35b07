package borderwright.pack.sheets.site;

import borderwright.engine.plan.Plan;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;

/**
 * What soil costs in bags and loads, and what a false floor would save.
 *
 * @param plan the plan
 */
public record SoilCostSheet(Plan plan) implements Sheet {
    /** Whether there is anything to choose between. */
    public static boolean isOf(Plan plan) {
        return !plan.site().bags().isEmpty() || plan.site().platforms().size() > 1;
    }

    @Override
    public String title() {
        return "Bags, loads and floors";
    }

    @Override
    public Part part() {
        return Part.WORKING;
    }
}
