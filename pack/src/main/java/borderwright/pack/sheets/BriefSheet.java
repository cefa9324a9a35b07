package borderwright.pack.sheets;

import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.planting.RimHeight;
import borderwright.pack.alike.Alike;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Totals, budget, and what to look at, on one page.
 *
 * @param plan the plan
 * @param variants the garden and its variants side by side; none when there are no variants
 * @param date the day that the pack is dated
 */
public record BriefSheet(Plan plan, Comparison variants, Optional<LocalDate> date) implements Sheet {
    @Override
    public String title() {
        return "Brief";
    }

    /** Which boxes figures are of, after a comma; empty where they are of all. */
    public String ofBoxes(RimHeight heights) {
        return heights.boxes().size() == plan.boxes().size() ? "" : ", " + Alike.inShort(heights.boxes());
    }

    @Override
    public Part part() {
        return Part.BRIEF;
    }
}
