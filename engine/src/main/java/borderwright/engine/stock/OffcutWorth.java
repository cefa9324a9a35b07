package borderwright.engine.stock;

import borderwright.engine.garden.CuttingSpec;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What an offcut is worth to the one who keeps it. Nothing, unless they say so.
 *
 * @param leastTicks shortest offcut that is kept, ticks, above 0 where a worth is given
 * @param perMetre its worth, minor units a metre, at least 0
 */
public record OffcutWorth(long leastTicks, long perMetre) {
    /** Offcuts count nothing. */
    public static final OffcutWorth NONE = new OffcutWorth(0, 0);

    private static final long TICKS_PER_METRE = 320_000;

    public OffcutWorth {
        if (leastTicks < 0 || perMetre < 0 || (perMetre > 0 && leastTicks == 0)) {
            throw new IllegalArgumentException("an offcut's worth needs a length above 0 and 0 or more a metre, got "
                    + leastTicks + ", " + perMetre);
        }
    }

    /**
     * As a garden says it.
     *
     * @param decimals decimal places of the currency's minor unit
     */
    public static OffcutWorth of(CuttingSpec rules, int decimals) {
        BigDecimal each = rules.offcutPerMetre();
        return each.signum() == 0
                ? NONE
                : new OffcutWorth(
                        rules.shortestOffcut().ticks(),
                        each.movePointRight(decimals)
                                .setScale(0, RoundingMode.HALF_UP)
                                .longValueExact());
    }

    /** Whether offcuts count at all. */
    public boolean counts() {
        return perMetre > 0;
    }

    /** Worth of a length that is left over in one, minor units, rounded down; 0 where it is too short to keep. */
    public long of(long ticks) {
        return !counts() || ticks < leastTicks
                ? 0
                : Math.floorDiv(Math.multiplyExact(ticks, perMetre), TICKS_PER_METRE);
    }
}
