package borderwright.engine.plan;

import borderwright.engine.problem.Problem;
import java.util.List;

/** What planning a garden comes to. */
public sealed interface PlanAnswer {

    /** A whole plan; what does not hold or cannot be met is in it. */
    record Planned(Plan plan) implements PlanAnswer {}

    /**
     * No plan: the border is not fixed by its measures, or nothing stands in it.
     *
     * @param reasons the reasons, the gravest first
     */
    record NotPlanned(List<Problem> reasons) implements PlanAnswer {
        public NotPlanned {
            reasons = List.copyOf(reasons);
        }
    }
}
