package borderwright.engine.estimate;

import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * Prices at one end of the range: the person's own where given, else a habit.
 *
 * <p>Habit prices are in the garden's currency whatever it is, and so no better than a first guess (common practice, no
 * source): sawn softwood 550 to 850 a cubic metre, soil 45 to 75, a box of 200 screws 10 to 18, a delivery 25 to 60.
 *
 * @param currency of all money
 * @param boardPerMetre price of a metre of wall board; null for habit
 * @param woodPerCubicMetre habit price of wood
 * @param soilPerCubicMetre price of soil
 * @param screwBox price of a box of 200 screws
 * @param delivery cost of a delivery
 */
record EstimatePrices(
        CurrencyUnit currency,
        @Nullable BigDecimal boardPerMetre,
        BigDecimal woodPerCubicMetre,
        BigDecimal soilPerCubicMetre,
        BigDecimal screwBox,
        BigDecimal delivery) {

    static EstimatePrices low(EstimateRequest wish) {
        return of(wish, 550, 45, 10, 25);
    }

    static EstimatePrices high(EstimateRequest wish) {
        return of(wish, 850, 75, 18, 60);
    }

    private static EstimatePrices of(EstimateRequest wish, int wood, int soil, int screws, int delivery) {
        return new EstimatePrices(
                CurrencyUnit.of(wish.currency()),
                wish.boardPerMetre(),
                BigDecimal.valueOf(wood),
                wish.soilPerCubicMetre() != null ? wish.soilPerCubicMetre() : BigDecimal.valueOf(soil),
                BigDecimal.valueOf(screws),
                wish.delivery() != null ? wish.delivery() : BigDecimal.valueOf(delivery));
    }

    /** Price of one board, minor units, rounded half up. */
    long boardMinor(SectionSpec section, Length length) {
        double metres = length.mm() / 1000;
        if (boardPerMetre != null && section.name().equals(DesignEstimate.WALL)) {
            return minor(boardPerMetre.multiply(BigDecimal.valueOf(metres)));
        }
        double cubicMetres = metres * section.thickness().mm() * section.width().mm() / 1e6;
        return minor(woodPerCubicMetre.multiply(BigDecimal.valueOf(cubicMetres)));
    }

    long screwBoxMinor() {
        return minor(screwBox);
    }

    long deliveryMinor() {
        return minor(delivery);
    }

    /** Cost of a volume of soil, minor units, rounded half up. */
    long soilMinor(double cubicMetres) {
        return minor(soilPerCubicMetre.multiply(BigDecimal.valueOf(cubicMetres)));
    }

    private long minor(BigDecimal amount) {
        return amount.movePointRight(currency.getDecimalPlaces())
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
