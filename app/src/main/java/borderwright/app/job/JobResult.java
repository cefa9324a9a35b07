package borderwright.app.job;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.problem.Problem;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a job comes to. */
public sealed interface JobResult {

    /**
     * The garden was planned; what does not hold or cannot be met is in the plan.
     *
     * @param plan of the garden
     * @param comparison the garden and its variants side by side
     * @param files content of the pack's files by name, in the order in which they are best written
     */
    record Planned(Plan plan, Comparison comparison, Map<String, byte[]> files) implements JobResult {
        public Planned {
            files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
        }
    }

    /**
     * The garden cannot be planned.
     *
     * @param units of the garden, to write the reasons in
     * @param reasons the gravest first
     */
    record NotPlanned(UnitSystem units, List<Problem> reasons) implements JobResult {
        public NotPlanned {
            reasons = List.copyOf(reasons);
        }
    }

    /** The job was stopped before there was an answer. */
    record Stopped() implements JobResult {}
}
