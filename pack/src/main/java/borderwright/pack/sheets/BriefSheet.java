package borderwright.pack.sheets;

import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
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
}
