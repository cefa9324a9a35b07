package borderwright.engine.prices;

import java.math.BigDecimal;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * The unit in which money is counted in whole numbers.
 *
 * @param currency of the amounts; {@link #NONE} where none is known
 * @param places decimal places of the unit, at least 0
 */
public record MinorUnit(CurrencyUnit currency, int places) {
    /** No currency: XXX of ISO 4217. */
    public static final CurrencyUnit NONE = CurrencyUnit.of("XXX");

    private static final int USUAL_PLACES = 2;

    public MinorUnit {
        if (places < 0) {
            throw new IllegalArgumentException("a unit of money needs 0 decimal places or more, got " + places);
        }
    }

    /** The smallest unit of a currency. */
    public static MinorUnit of(CurrencyUnit currency) {
        return new MinorUnit(currency, currency.getDecimalPlaces());
    }

    /** A unit of amounts whose currency is not known. */
    public static MinorUnit withoutCurrency(int places) {
        return new MinorUnit(NONE, places);
    }

    /** An amount, with at least the usual decimals of its currency, two without one; more only where it has them. */
    public BigMoney money(long units) {
        int usual = currency.equals(NONE) ? USUAL_PLACES : currency.getDecimalPlaces();
        BigDecimal amount = BigDecimal.valueOf(units, places).stripTrailingZeros();
        return BigMoney.of(currency, amount.setScale(Math.max(usual, amount.scale())));
    }
}
