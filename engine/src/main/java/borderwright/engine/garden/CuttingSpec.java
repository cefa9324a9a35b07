package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import java.math.BigDecimal;

/**
 * How boards are cut up.
 *
 * @param trim waste cut off each end of a bought board, kerf included
 * @param rejectsPercent share of boards that turn out unusable
 * @param keepWhole boards of each wall section kept uncut until the last planter stands
 * @param extraForFitting extra length on pieces that wait for a re-measured gap
 * @param shortestOffcut shortest offcut that is kept
 * @param offcutPerMetre what a metre of an offcut that is kept is worth; 0 for nothing
 * @param lengthsTo the step to which lengths are cut
 */
public record CuttingSpec(
        Length trim,
        double rejectsPercent,
        int keepWhole,
        Length extraForFitting,
        Length shortestOffcut,
        BigDecimal offcutPerMetre,
        Length lengthsTo) {

    /** The same with another share of unusable boards. */
    public CuttingSpec withRejects(double percent) {
        return new CuttingSpec(trim, percent, keepWhole, extraForFitting, shortestOffcut, offcutPerMetre, lengthsTo);
    }
}
