package borderwright.engine.garden;

import java.math.BigDecimal;

/**
 * A section of the same size that may be bought in place of another.
 *
 * @param section that may be bought
 * @param inPlaceOf section that it stands in for
 * @param perMetre what the difference is worth, for each metre: weighed against prices, paid to nobody
 */
public record Substitute(String section, String inPlaceOf, BigDecimal perMetre) {}
