package borderwright.engine.garden;

import borderwright.engine.problem.Problem;
import java.util.List;

/** What no single record can know: names that must be found elsewhere in the document. */
public final class GardenChecks {
    private GardenChecks() {}

    /** All faults that span records, in document order; empty when there are none. */
    public static List<Problem> check(Garden garden) {
        return List.of();
    }
}
