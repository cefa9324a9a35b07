package borderwright.pack.sheets;

import borderwright.engine.layout.run.LayoutNote;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.planting.RimHeight;
import borderwright.pack.alike.Alike;
import java.time.LocalDate;
import java.util.List;
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

    /** What the layout says of planters that cannot be reached in every place. */
    public List<Message> outOfReach() {
        return plan.layout().notes().stream()
                .filter(note -> note.code() == LayoutNote.LAYOUT_REACH || note.code() == LayoutNote.LAYOUT_NO_ACCESS)
                .toList();
    }

    @Override
    public Part part() {
        return Part.BRIEF;
    }
}
