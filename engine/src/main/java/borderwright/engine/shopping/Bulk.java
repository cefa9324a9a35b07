package borderwright.engine.shopping;

import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A loose material as it is ordered: in m3, with imperial units in cubic yards, to the hundredth; rounding up keeps it enough.
 *
 * @param quantity how much
 * @param unit of what
 */
public record Bulk(BigDecimal quantity, String unit) {
    private static final String METRIC = "m3";
    private static final String IMPERIAL = "cu yd";

    /** Whether something in this unit is a loose material. */
    public static boolean isUnit(String unit) {
        return unit.equals(METRIC) || unit.equals(IMPERIAL);
    }

    static Bulk of(double m3, UnitSystem units) {
        return new Bulk(
                BigDecimal.valueOf(m3 / unitM3(units)).setScale(2, RoundingMode.CEILING),
                units == UnitSystem.IMPERIAL ? IMPERIAL : METRIC);
    }

    /** What one of the unit is in m3. */
    public static double unitM3(UnitSystem units) {
        return units == UnitSystem.IMPERIAL ? UnitFactors.M3_PER_CUBIC_YARD : 1;
    }
}
