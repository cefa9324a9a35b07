package borderwright.engine.buying;

import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The answer in a currency, for people. */
public final class Baskets {
    private Baskets() {}

    /** The basket of an answer; without a basket an empty one whose reasons say why. */
    public static Basket of(ShoppingAnswer answer, CurrencyUnit currency) {
        List<Basket.Order> orders = new ArrayList<>();
        for (ShoppingAnswer.Order order : answer.orders()) {
            orders.add(order(order, currency));
        }
        List<Basket.Unpriced> unpriced = new ArrayList<>();
        for (GoodsNeed need : answer.unpriced()) {
            unpriced.add(new Basket.Unpriced(
                    need.item(), need.quantity().stripTrailingZeros().toPlainString() + " " + need.unit()));
        }
        return new Basket(
                orders,
                Money.ofMinor(currency, answer.cost()),
                Money.ofMinor(currency, answer.bound()),
                answer.proven(),
                unpriced,
                answer.reasons());
    }

    private static Basket.Order order(ShoppingAnswer.Order order, CurrencyUnit currency) {
        List<Basket.Line> lines = new ArrayList<>();
        for (ShoppingAnswer.BoardLine line : order.boards()) {
            BoardOffer offer = line.offer();
            lines.add(new Basket.Line(
                    offer.section(),
                    new Length(offer.lengthTicks()),
                    line.packs() * offer.pack(),
                    offer.pack(),
                    Money.ofMinor(currency, offer.packPrice()),
                    Money.ofMinor(currency, line.packs() * offer.packPrice())));
        }
        for (ShoppingAnswer.GoodsLine line : order.goods()) {
            lines.add(new Basket.Line(
                    line.offer().item(),
                    Length.ZERO,
                    line.count(),
                    1,
                    Money.ofMinor(currency, line.offer().price()),
                    Money.ofMinor(currency, line.count() * line.offer().price())));
        }
        return new Basket.Order(
                order.supplier(),
                lines,
                Money.ofMinor(currency, order.value()),
                Money.ofMinor(currency, order.delivery()),
                Money.ofMinor(currency, order.tax()),
                Money.ofMinor(currency, order.total()));
    }
}
