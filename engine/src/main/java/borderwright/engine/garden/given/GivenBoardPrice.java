package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The price of one board, or of a metre, foot or board foot of it, in the lengths in which it is sold. */
@Described("the price of one board, or of a metre, foot or board foot of it, in the lengths in which it is sold")
public record GivenBoardPrice(
        @Described(value = "section, by its name", example = "larch 25 x 150")
        String section,

        @Described(
                value = "length, when the price is for one whole board",
                example = "3.6 m",
                atLeast = 50,
                usuallyAtLeast = 150,
                usuallyAtMost = 7500)
        @Nullable
        Length length,

        @Described(value = "lengths in which it is sold, when the price is by length", example = "[3.0 m, 3.6 m]")
        List<Length> lengths,

        @Described(value = "price of one whole board, or of a pack when a pack is given", example = "9.60", atLeast = 0)
        @Nullable
        BigDecimal price,

        @Described(value = "price per metre", example = "2.05", atLeast = 0) @Nullable
        BigDecimal perMetre,

        @Described(value = "price per foot", example = "1.20", atLeast = 0) @Nullable
        BigDecimal perFoot,

        @Described(value = "price per board foot (144 cubic inches)", example = "1.05", atLeast = 0) @Nullable
        BigDecimal perBoardFoot,

        @Described(value = "boards in a pack, bought whole", otherwise = "1", atLeast = 1, atMost = 10000) @Nullable
        Integer pack,

        @Described(value = "boards to be had", otherwise = "as many as needed", atLeast = 0, atMost = 1000000) @Nullable
        Integer available,

        @Described(
                value = "boards from which the price holds, for all of them; give the usual price a line of its own",
                example = "10",
                otherwise = "any number",
                atLeast = 1,
                atMost = 1000000)
        @Nullable
        Integer priceFromCount) {
    public GivenBoardPrice {
        lengths = List.copyOf(lengths);
    }

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(String section) {
        return new Builder(section);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final String section;
        private @Nullable Length length;
        private List<Length> lengths = List.of();
        private @Nullable BigDecimal price;
        private @Nullable BigDecimal perMetre;
        private @Nullable BigDecimal perFoot;
        private @Nullable BigDecimal perBoardFoot;
        private @Nullable Integer pack;
        private @Nullable Integer available;
        private @Nullable Integer priceFromCount;

        private Builder(String section) {
            this.section = section;
        }

        public Builder length(@Nullable Length given) {
            length = given;
            return this;
        }

        public Builder lengths(List<Length> given) {
            lengths = given;
            return this;
        }

        public Builder price(@Nullable BigDecimal given) {
            price = given;
            return this;
        }

        public Builder perMetre(@Nullable BigDecimal given) {
            perMetre = given;
            return this;
        }

        public Builder perFoot(@Nullable BigDecimal given) {
            perFoot = given;
            return this;
        }

        public Builder perBoardFoot(@Nullable BigDecimal given) {
            perBoardFoot = given;
            return this;
        }

        public Builder pack(@Nullable Integer given) {
            pack = given;
            return this;
        }

        public Builder available(@Nullable Integer given) {
            available = given;
            return this;
        }

        public Builder priceFromCount(@Nullable Integer given) {
            priceFromCount = given;
            return this;
        }

        public GivenBoardPrice build() {
            return new GivenBoardPrice(
                    section, length, lengths, price, perMetre, perFoot, perBoardFoot, pack, available, priceFromCount);
        }
    }
}
