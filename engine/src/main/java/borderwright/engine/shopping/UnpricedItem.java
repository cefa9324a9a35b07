package borderwright.engine.shopping;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.UsualPrice;
import borderwright.engine.garden.UsualPrices;
import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Something needed that no supplier prices, with what it usually costs.
 *
 * @param item its name on the shopping list
 * @param quantity how much is needed
 * @param unit unit of that, in words
 * @param usual what it usually costs; empty where no such price is known or counted
 */
public record UnpricedItem(String item, BigDecimal quantity, String unit, Optional<UsualCost> usual) {

    /**
     * Whole boxes, rolls or loads at their usual price.
     *
     * @param count how many
     * @param contains how much is in one, in the unit of the item
     * @param each usual price of one
     * @param sum price of all
     * @param origin a default, and what it rests on
     */
    public record UsualCost(int count, BigDecimal contains, Money each, Money sum, Origins.Origin origin) {
        /** How many at which price, the goods being counted or measured in a unit. */
        public Message packs(String unit) {
            return contains.compareTo(BigDecimal.ONE) == 0
                    ? ShoppingMessage.USUAL_EACH.of(count, each)
                    : ShoppingMessage.USUAL_PACKS.of(count, each, printed(contains), unit);
        }
    }

    /** What is needed, and what that usually costs. */
    public Message line() {
        String needed = printed(quantity);
        return usual.map(cost ->
                        ShoppingMessage.GOODS_AT_USUAL_PRICE.of(item, needed, unit, cost.sum(), cost.packs(unit)))
                .orElseGet(() -> ShoppingMessage.GOODS_WITHOUT_PRICE.of(item, needed, unit));
    }

    /** To the hundredth, without zeros at the end. */
    private static String printed(BigDecimal number) {
        BigDecimal rounded = number.setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** What is needed and has no price, in the same order. */
    public static List<UnpricedItem> of(List<GoodsNeed> needs, UsualPrices prices, CurrencyUnit currency) {
        return needs.stream()
                .map(need -> new UnpricedItem(
                        need.item(),
                        need.quantity(),
                        need.unit(),
                        prices.of(need.item(), need.unit()).map(price -> cost(need.quantity(), price, currency))))
                .toList();
    }

    private static UsualCost cost(BigDecimal quantity, UsualPrice price, CurrencyUnit currency) {
        int count = quantity.divide(price.contains(), 0, RoundingMode.CEILING).intValueExact();
        Money each = Money.of(currency, price.price(), RoundingMode.HALF_UP);
        return new UsualCost(count, price.contains(), each, each.multipliedBy(count), price.origin());
    }
}
