package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What the planters are filled with. */
@Described("what the planters are filled with")
public record SoilWish(
        @Described(value = "settlement to allow for, in percent", otherwise = "15", atLeast = 0, atMost = 60) @Nullable
        Double settles,

        @Described(value = "how far the soil stays below the rim", otherwise = "30 mm", atLeast = 0, atMost = 300)
        @Nullable
        Length below,

        @Described(value = "price of one cubic metre when no supplier's price is given", atLeast = 0) @Nullable
        BigDecimal perCubicMetre) {
    /** Habits when nothing is said. */
    public static final SoilWish HABIT = new SoilWish(null, null, null);

    /** Settlement, as a fraction (habit 0.15: common practice, no source). */
    public double settlement() {
        return settles == null ? 0.15 : settles / 100;
    }

    public double belowRimMm() {
        return below == null ? 30 : below.mm();
    }
}
