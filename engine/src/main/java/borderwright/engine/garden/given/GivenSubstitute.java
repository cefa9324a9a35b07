package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A section of the same size that may be bought in place of another. */
@Described("a section of the same size that may be bought in place of another")
public record GivenSubstitute(
        @Described(value = "section that may be bought, by its name", example = "treated 25 x 150")
        String section,

        @Described(value = "section that it stands in for", example = "larch 25 x 150")
        String inPlaceOf,

        @Described(
                value = "what the difference is worth to you, for each metre: weighed against prices, paid to nobody",
                example = "0.40",
                otherwise = "0",
                atLeast = 0)
        @Nullable
        BigDecimal perMetre) {}
