package borderwright.engine.garden.resolve;

import borderwright.engine.garden.Origins;
import borderwright.engine.garden.UsualPrice;
import borderwright.engine.garden.UsualPrices;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * What goods usually cost where no supplier prices them.
 *
 * <p>All prices are from memory, for small quantities, tax included, delivery not: rough, to be replaced by a quote. Boards have
 * none: the basket decides. Prices in pounds and euros are for metric packs, those in US dollars for US packs. See
 * docs/decisions/0071.
 */
final class UsualPriceResolver {
    static final String SOURCE = "from memory, rough";

    private static final List<UsualPrice> POUNDS = List.of(
            counted("screw", 100, "9"),
            counted("corner strap", 1, "2"),
            counted("angle bracket", 1, "1.50"),
            counted("concrete", 1, "7"),
            counted("staple", 1000, "5"),
            counted("fabric pin", 50, "6"),
            counted("packer", 20, "6"),
            counted("skip", 1, "280"),
            row("liner roll", "1", "rolls", "25"),
            row("membrane roll", "1", "rolls", "15"),
            row("floor fabric", "15", "m2", "15"),
            row("finish", "2.5", "litres", "35"),
            row("preservative", "1", "litres", "15"),
            row("gravel", "0.5", "m3", "45"),
            row("soil", "1", "m3", "60"),
            row("topsoil", "1", "m3", "55"),
            row("compost", "1", "m3", "75"),
            row("", "1", "m3", "70"));

    private static final List<UsualPrice> EUROS = List.of(
            counted("screw", 100, "10"),
            counted("corner strap", 1, "2.20"),
            counted("angle bracket", 1, "1.80"),
            counted("concrete", 1, "6.50"),
            counted("staple", 1000, "5"),
            counted("fabric pin", 50, "7"),
            counted("packer", 20, "7"),
            counted("skip", 1, "320"),
            row("liner roll", "1", "rolls", "28"),
            row("membrane roll", "1", "rolls", "18"),
            row("floor fabric", "15", "m2", "17"),
            row("finish", "2.5", "litres", "40"),
            row("preservative", "1", "litres", "17"),
            row("gravel", "0.5", "m3", "45"),
            row("soil", "1", "m3", "55"),
            row("topsoil", "1", "m3", "50"),
            row("compost", "1", "m3", "75"),
            row("", "1", "m3", "70"));

    private static final List<UsualPrice> US_DOLLARS = List.of(
            counted("screw", 100, "12"),
            counted("corner strap", 1, "3"),
            counted("angle bracket", 1, "2.50"),
            counted("concrete", 1, "6"),
            counted("staple", 1000, "6"),
            counted("fabric pin", 50, "9"),
            counted("packer", 20, "7"),
            counted("skip", 1, "400"),
            row("liner roll", "1", "rolls", "30"),
            row("membrane roll", "1", "rolls", "25"),
            row("floor fabric", "150", "sq ft", "20"),
            row("finish", "4", "quarts", "50"),
            row("preservative", "1", "quarts", "18"),
            row("gravel", "1", "cu yd", "60"),
            row("soil", "1", "cu yd", "50"),
            row("topsoil", "1", "cu yd", "45"),
            row("compost", "1", "cu yd", "60"),
            row("", "1", "cu yd", "60"));

    private static final Map<String, List<UsualPrice>> BY_CURRENCY =
            Map.of("GBP", POUNDS, "EUR", EUROS, "USD", US_DOLLARS);

    private UsualPriceResolver() {}

    /**
     * Usual prices in a currency, unless they are put off.
     *
     * @param given whether the document counts them; null where it says nothing
     */
    static UsualPrices resolve(@Nullable Boolean given, CurrencyUnit currency, Ledger ledger) {
        if (!ledger.or("usual prices", given, true, SOURCE)) {
            return new UsualPrices(UsualPrices.Use.PUT_OFF, List.of());
        }
        List<UsualPrice> prices = BY_CURRENCY.getOrDefault(currency.getCode(), List.of());
        return new UsualPrices(prices.isEmpty() ? UsualPrices.Use.NO_LIST : UsualPrices.Use.COUNTED, prices);
    }

    /** Counted goods, or a hire. */
    private static UsualPrice counted(String goods, int pieces, String price) {
        return row(goods, Integer.toString(pieces), "pieces", price);
    }

    private static UsualPrice row(String goods, String contains, String unit, String price) {
        return new UsualPrice(
                goods,
                new BigDecimal(contains),
                unit,
                new BigDecimal(price),
                new Origins.Origin(Origins.Kind.DEFAULT, contains + " " + unit + " for " + price, SOURCE));
    }
}
