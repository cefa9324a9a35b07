package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** What the first planter taught, once it stood: a prototype, measured before the rest is cut. */
@Described("what the first planter taught, once it stood; the rest is planned by it")
public record GivenFirstPlanter(
        @Described(
                value = "hours to cut it, saw set-ups and all people together",
                example = "1.5",
                otherwise = "not timed",
                atLeast = 0.01)
        @Nullable
        Double cutting,

        @Described(
                value = "hours to build it, all people together",
                example = "2.5",
                otherwise = "not timed",
                atLeast = 0.01)
        @Nullable
        Double building,

        @Described(
                value = "width of the cut that the saw really took; it takes the place of `kerf` at the saws",
                example = "3.2 mm",
                otherwise = "not measured",
                atLeast = 0.5,
                atMost = 10)
        @Nullable
        Length kerf,

        @Described(value = "the saw whose cut was measured", otherwise = "all of them") @Nullable
        String saw,

        @Described(value = "boards that were looked over for it", otherwise = "not counted", atLeast = 1, atMost = 2000)
        @Nullable
        Integer boards,

        @Described(
                value = "how many of these were of no use; `rejects percent` moves towards it",
                otherwise = "0",
                atLeast = 0,
                atMost = 2000)
        @Nullable
        Integer unusable,

        @Described(
                value = "how far its worst wall bulges, filled, after a season or more",
                example = "6 mm",
                otherwise = "not measured",
                atLeast = 0,
                atMost = 200)
        @Nullable
        Length bulge) {
    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder() {
        return new Builder();
    }

    /** Gives it key by key. */
    public static final class Builder {
        private @Nullable Double cutting;
        private @Nullable Double building;
        private @Nullable Length kerf;
        private @Nullable String saw;
        private @Nullable Integer boards;
        private @Nullable Integer unusable;
        private @Nullable Length bulge;

        private Builder() {}

        public Builder cutting(@Nullable Double given) {
            cutting = given;
            return this;
        }

        public Builder building(@Nullable Double given) {
            building = given;
            return this;
        }

        public Builder kerf(@Nullable Length given) {
            kerf = given;
            return this;
        }

        public Builder saw(@Nullable String given) {
            saw = given;
            return this;
        }

        public Builder boards(@Nullable Integer given) {
            boards = given;
            return this;
        }

        public Builder unusable(@Nullable Integer given) {
            unusable = given;
            return this;
        }

        public Builder bulge(@Nullable Length given) {
            bulge = given;
            return this;
        }

        public GivenFirstPlanter build() {
            return new GivenFirstPlanter(cutting, building, kerf, saw, boards, unusable, bulge);
        }
    }
}
