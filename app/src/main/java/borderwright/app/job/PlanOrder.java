package borderwright.app.job;

import borderwright.engine.garden.given.GardenDocument;
import borderwright.pack.paper.PaperSize;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What is to be planned and printed.
 *
 * @param document the garden with its variants
 * @param workUnits what the search for the basket of each design may spend, at least 0
 * @param paper of the pack; empty for the usual paper of the garden's units
 * @param date the day that the pack is dated; empty for an undated pack, which repeats to the byte
 */
public record PlanOrder(GardenDocument document, long workUnits, Optional<PaperSize> paper, Optional<LocalDate> date) {
    public PlanOrder {
        if (workUnits < 0) {
            throw new IllegalArgumentException("a job needs 0 work units or more, got " + workUnits);
        }
    }
}
