package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import java.math.BigDecimal;

/**
 * How boards are cut up.
 *
 * @param trim waste cut off each end of a bought board, kerf included
 * @param rejectsPercent share of boards that turn out unusable
 * @param holdBack boards of each wall section kept uncut until the last planter stands
 * @param waitAllowance extra length on pieces that wait for a re-measured gap
 * @param keep shortest offcut that is kept
 * @param offcutPerMetre what a metre of an offcut that is kept is worth; 0 for nothing
 */
public record CuttingSpec(
        Length trim,
        double rejectsPercent,
        int holdBack,
        Length waitAllowance,
        Length keep,
        BigDecimal offcutPerMetre) {

    /** The same with another share of unusable boards. */
    public CuttingSpec withRejects(double percent) {
        return new CuttingSpec(trim, percent, holdBack, waitAllowance, keep, offcutPerMetre);
    }
}
