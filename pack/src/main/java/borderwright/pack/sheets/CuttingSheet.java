package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.plan.Plan;
import java.util.List;

/**
 * Every board with its pieces.
 *
 * @param boards in the order in which they are cut
 * @param plan the plan
 */
public record CuttingSheet(List<BoardCard> boards, Plan plan) implements Sheet {
    public CuttingSheet {
        boards = List.copyOf(boards);
    }

    @Override
    public String title() {
        return "Cutting sheets";
    }

    @Override
    public Part part() {
        return Part.SAW;
    }

    /** The number of a cut's set-up; empty when it has none. */
    public String setUp(CuttingPlan.Cut cut) {
        List<CuttingPlan.SetUp> setUps = plan.cutting().setUps();
        return cut.setUp() < 0 || cut.setUp() >= setUps.size()
                ? ""
                : Integer.toString(setUps.get(cut.setUp()).number());
    }
}
