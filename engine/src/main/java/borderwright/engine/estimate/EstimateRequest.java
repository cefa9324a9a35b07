package borderwright.engine.estimate;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
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
        @Nullable BigDecimal delivery) {}
