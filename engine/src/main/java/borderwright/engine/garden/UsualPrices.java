package borderwright.engine.garden;

import borderwright.engine.measure.UnitFactors;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What goods usually cost where no supplier prices them.
 *
 * @param use whether they count
 * @param prices one for each kind of goods, in the garden's currency; none unless {@code use} is {@link Use#COUNTED}
 */
public record UsualPrices(Use use, List<UsualPrice> prices) {
    /** Units that measure the same thing, each with its size in the metric one. */
    private static final List<Map<String, Double>> UNITS = List.of(
            Map.of("m3", 1.0, "cu yd", UnitFactors.M3_PER_CUBIC_YARD),
            Map.of("m2", 1.0, "sq ft", UnitFactors.M2_PER_SQUARE_FOOT),
            Map.of("litres", 1.0, "quarts", UnitFactors.LITRES_PER_QUART));

    /** Whether usual prices count. */
    public enum Use {
        COUNTED,
        /** The garden document puts them off. */
        PUT_OFF,
        /** There is no list for the garden's currency. */
        NO_LIST
    }

    public UsualPrices {
        prices = List.copyOf(prices);
    }

    /**
     * The usual price of goods: of the longest name that fits, its content in the unit asked for.
     *
     * @param item name on the shopping list
     * @param unit unit in which it is needed
     */
    public Optional<UsualPrice> of(String item, String unit) {
        return prices.stream()
                .filter(price -> price.names(item))
                .flatMap(price -> in(price, unit).stream())
                .max(Comparator.comparingInt(price -> price.goods().length()));
    }

    private static Optional<UsualPrice> in(UsualPrice price, String unit) {
        if (price.unit().equals(unit)) {
            return Optional.of(price);
        }
        return unit(price.unit(), unit)
                .map(factor -> new UsualPrice(
                        price.goods(),
                        price.contains().multiply(BigDecimal.valueOf(factor), MathContext.DECIMAL64),
                        unit,
                        price.price(),
                        price.origin()));
    }

    /** How many of the second unit make one of the first; nothing where they measure different things. */
    private static Optional<Double> unit(String one, String other) {
        return UNITS.stream()
                .filter(sizes -> sizes.containsKey(one) && sizes.containsKey(other))
                .findFirst()
                .map(sizes -> Objects.requireNonNull(sizes.get(one)) / Objects.requireNonNull(sizes.get(other)));
    }
}
