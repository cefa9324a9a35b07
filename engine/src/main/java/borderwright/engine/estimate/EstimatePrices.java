package borderwright.engine.estimate;

import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * Prices at one end of the range: the person's own where given, else common ones.
 *
 * @param currency of all money
 * @param boardPerMetre price of a metre of wall board; null where wood is priced by volume
 * @param common prices of everything else
 */
record EstimatePrices(CurrencyUnit currency, @Nullable BigDecimal boardPerMetre, Common common) {
    static final int SCREWS_IN_A_BOX = 200;

    /**
     * Common prices, in the currency of the estimate whatever it is, and so no better than a first guess (common practice, no
     * source).
     *
     * @param woodPerCubicMetre sawn softwood
     * @param soilPerCubicMetre price of soil
     * @param screwBox price of a box of 200 screws
     * @param delivery cost of a delivery
     */
    record Common(
            BigDecimal woodPerCubicMetre, BigDecimal soilPerCubicMetre, BigDecimal screwBox, BigDecimal delivery) {
        private static Common of(int wood, int soil, int screws, int delivery) {
            return new Common(
                    BigDecimal.valueOf(wood),
                    BigDecimal.valueOf(soil),
                    BigDecimal.valueOf(screws),
                    BigDecimal.valueOf(delivery));
        }

        /** The same with the prices that a request gives. */
        private Common with(EstimateRequest request) {
            return new Common(
                    woodPerCubicMetre,
                    request.soilPerCubicMetre() != null ? request.soilPerCubicMetre() : soilPerCubicMetre,
                    screwBox,
                    request.delivery() != null ? request.delivery() : delivery);
        }
    }

    static final Common LOW = Common.of(550, 45, 10, 25);
    static final Common HIGH = Common.of(850, 75, 18, 60);

    static EstimatePrices low(EstimateRequest request) {
        return of(request, LOW);
    }

    static EstimatePrices high(EstimateRequest request) {
        return of(request, HIGH);
    }

    private static EstimatePrices of(EstimateRequest request, Common common) {
        return new EstimatePrices(CurrencyUnit.of(request.currency()), request.boardPerMetre(), common.with(request));
    }

    /** Price of one board, minor units, rounded half up. */
    long boardMinor(SectionSpec section, Length length) {
        double metres = length.mm() / 1000;
        if (boardPerMetre != null && section.name().equals(DesignEstimate.WALL)) {
            return minor(boardPerMetre.multiply(BigDecimal.valueOf(metres)));
        }
        double cubicMetres = metres * section.thickness().mm() * section.width().mm() / 1e6;
        return minor(common.woodPerCubicMetre.multiply(BigDecimal.valueOf(cubicMetres)));
    }

    long screwBoxMinor() {
        return minor(common.screwBox);
    }

    long deliveryMinor() {
        return minor(common.delivery);
    }

    /** Cost of a volume of soil, minor units, rounded half up. */
    long soilMinor(double cubicMetres) {
        return minor(common.soilPerCubicMetre.multiply(BigDecimal.valueOf(cubicMetres)));
    }

    private long minor(BigDecimal amount) {
        return amount.movePointRight(currency.getDecimalPlaces())
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
