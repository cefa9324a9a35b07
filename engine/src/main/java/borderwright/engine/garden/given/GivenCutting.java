package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** How boards are cut. */
@Described("how boards are cut")
public record GivenCutting(
        @Described(
                value = "waste cut off each end of a bought board, kerf included",
                otherwise = "10 mm",
                atLeast = 0,
                atMost = 300)
        @Nullable
        Length trim,

        @Described(value = "share of boards that turn out unusable", otherwise = "0", atLeast = 0, atMost = 50)
        @Nullable
        Double rejectsPercent,

        @Described(
                value = "boards kept uncut until the last planter stands, of each wall section",
                otherwise = "0",
                atLeast = 0,
                atMost = 50)
        @Nullable
        Integer keepWhole,

        @Described(
                value = "extra length on pieces that are cut to fit last, when their gap is measured again",
                otherwise = "10 mm",
                atLeast = 0,
                atMost = 200)
        @Nullable
        Length extraForFitting,

        @Described(
                value = "shortest offcut that is worth keeping",
                otherwise = "400 mm",
                atLeast = 50,
                usuallyAtMost = 3000)
        @Nullable
        Length shortestOffcut,

        @Described(
                value =
                        "what a metre of an offcut that is kept is worth to you, weighed against prices and paid by nobody",
                otherwise = "0",
                atLeast = 0)
        @Nullable
        BigDecimal offcutPerMetre,

        @Described(
                value = "the step to which lengths are cut; pieces are rounded down to it, such as 0.5 mm or 1/32 in",
                otherwise = "1 mm, or 1/16 in where lengths are written in inches",
                atLeast = 0.1,
                atMost = 5)
        @Nullable
        Length lengthsTo) {
    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder() {
        return new Builder();
    }

    /** Gives it key by key. */
    public static final class Builder {
        private @Nullable Length trim;
        private @Nullable Double rejectsPercent;
        private @Nullable Integer keepWhole;
        private @Nullable Length extraForFitting;
        private @Nullable Length shortestOffcut;
        private @Nullable BigDecimal offcutPerMetre;
        private @Nullable Length lengthsTo;

        private Builder() {}

        public Builder trim(@Nullable Length given) {
            trim = given;
            return this;
        }

        public Builder rejectsPercent(@Nullable Double given) {
            rejectsPercent = given;
            return this;
        }

        public Builder keepWhole(@Nullable Integer given) {
            keepWhole = given;
            return this;
        }

        public Builder extraForFitting(@Nullable Length given) {
            extraForFitting = given;
            return this;
        }

        public Builder shortestOffcut(@Nullable Length given) {
            shortestOffcut = given;
            return this;
        }

        public Builder offcutPerMetre(@Nullable BigDecimal given) {
            offcutPerMetre = given;
            return this;
        }

        public Builder lengthsTo(@Nullable Length given) {
            lengthsTo = given;
            return this;
        }

        public GivenCutting build() {
            return new GivenCutting(
                    trim, rejectsPercent, keepWhole, extraForFitting, shortestOffcut, offcutPerMetre, lengthsTo);
        }
    }
}
