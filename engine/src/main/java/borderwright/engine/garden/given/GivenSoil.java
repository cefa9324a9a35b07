package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What the planters are filled with. */
@Described("what the planters are filled with")
public record GivenSoil(
        @Described(value = "settlement to allow for, of what is put in", otherwise = "15", atLeast = 0, atMost = 60)
        @Nullable
        Double settlesPercent,

        @Described(value = "how far the soil stays below the rim", otherwise = "30 mm", atLeast = 0, atMost = 300)
        @Nullable
        Length belowRim,

        @Described(value = "price of one cubic metre when no supplier's price is given", atLeast = 0) @Nullable
        BigDecimal perCubicMetre) {}
