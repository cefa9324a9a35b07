package borderwright.engine.estimate;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a person knows before any survey.
 *
 * @param run length of the whole run
 * @param depth from back to front
 * @param height of the walls
 * @param thickness of the wall boards
 * @param width of the wall boards: the height of one course
 * @param planters how many; null when not decided
 * @param units how lengths are written
 * @param currency ISO 4217 code of all money
 * @param boardPerMetre price of a metre of wall board, tax included; null for a range of common prices
 * @param soilPerCubicMetre price of soil, tax included; null for a range of common prices
 * @param delivery cost of one delivery, tax included; null for a range of common prices
 */
public record EstimateRequest(
        Length run,
        Length depth,
        Length height,
        Length thickness,
        Length width,
        @Nullable Integer planters,
        UnitSystem units,
        String currency,
        @Nullable BigDecimal boardPerMetre,
        @Nullable BigDecimal soilPerCubicMetre,
        @Nullable BigDecimal delivery) {
    public static Builder builder(UnitSystem units, String currency) {
        return new Builder(units, currency);
    }

    /** What is known, set one by one; no length may be left out, all else may. */
    public static final class Builder {
        private final UnitSystem units;
        private final String currency;
        private @Nullable Length run;
        private @Nullable Length depth;
        private @Nullable Length height;
        private @Nullable Length thickness;
        private @Nullable Length width;
        private @Nullable Integer planters;
        private @Nullable BigDecimal boardPerMetre;
        private @Nullable BigDecimal soilPerCubicMetre;
        private @Nullable BigDecimal delivery;

        private Builder(UnitSystem units, String currency) {
            this.units = units;
            this.currency = currency;
        }

        public Builder run(Length set) {
            run = set;
            return this;
        }

        public Builder depth(Length set) {
            depth = set;
            return this;
        }

        public Builder height(Length set) {
            height = set;
            return this;
        }

        public Builder thickness(Length set) {
            thickness = set;
            return this;
        }

        public Builder width(Length set) {
            width = set;
            return this;
        }

        public Builder planters(@Nullable Integer set) {
            planters = set;
            return this;
        }

        public Builder boardPerMetre(@Nullable BigDecimal set) {
            boardPerMetre = set;
            return this;
        }

        public Builder soilPerCubicMetre(@Nullable BigDecimal set) {
            soilPerCubicMetre = set;
            return this;
        }

        public Builder delivery(@Nullable BigDecimal set) {
            delivery = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a length is missing; its name is the message
         */
        public EstimateRequest build() {
            return new EstimateRequest(
                    Objects.requireNonNull(run, "run"),
                    Objects.requireNonNull(depth, "depth"),
                    Objects.requireNonNull(height, "height"),
                    Objects.requireNonNull(thickness, "thickness"),
                    Objects.requireNonNull(width, "width"),
                    planters,
                    units,
                    currency,
                    boardPerMetre,
                    soilPerCubicMetre,
                    delivery);
        }
    }
}
