package borderwright.app.job;

import borderwright.engine.garden.given.GardenDocument;
import borderwright.pack.paper.PaperSize;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What is to be planned and printed.
 *
 * @param document the garden with its variants
 * @param searchSteps that the search for the basket of each design may take, at least 0
 * @param paper of the pack; empty for the usual paper of the garden's units
 * @param date the day that the pack is dated; empty for an undated pack, which repeats to the byte
 */
public record PlanOrder(
        GardenDocument document, long searchSteps, Optional<PaperSize> paper, Optional<LocalDate> date) {
    public PlanOrder {
        if (searchSteps < 0) {
            throw new IllegalArgumentException("a job needs 0 search steps or more, got " + searchSteps);
        }
    }
}
