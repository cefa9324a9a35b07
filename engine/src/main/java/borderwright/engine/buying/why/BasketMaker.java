package borderwright.engine.buying.why;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.MinorUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The answer in a currency, for people. */
public final class BasketMaker {
    /** Accepted chance of running short: one in twenty, a default (common practice, no source). */
    private static final double RISK = 0.05;

    private BasketMaker() {}

    /**
     * The basket of an answer; without a basket an empty one whose reasons tell why.
     *
     * @param why what is known of it beyond its cost
     * @param rejectPercent share of boards that turn out unusable, percent, at least 0 and below 100
     */
    public static Basket of(ShoppingAnswer answer, Explanation why, CurrencyUnit currency, double rejectPercent) {
        List<Basket.Order> orders = new ArrayList<>();
        for (ShoppingAnswer.Order order : answer.orders()) {
            orders.add(order(order, currency));
        }
        List<Basket.Unpriced> unpriced = new ArrayList<>();
        for (GoodsNeed need : answer.unpriced()) {
            unpriced.add(new Basket.Unpriced(
                    need.item(), need.quantity().stripTrailingZeros().toPlainString() + " " + need.unit()));
        }
        List<Message> reasons = new ArrayList<>(BasketReasons.of(answer, why, MinorUnit.of(currency)));
        if (rejectPercent > 0 && answer.status() == ShoppingAnswer.Status.FOUND) {
            ShortageRisk.of(answer, rejectPercent / 100, RISK)
                    .forEach(section -> reasons.add(runsShort(section, rejectPercent)));
        }
        return new Basket(
                orders,
                Money.ofMinor(currency, answer.cost() - answer.counted()),
                Money.ofMinor(currency, answer.bound() - answer.counted()),
                answer.proven(),
                unpriced,
                reasons);
    }

    private static Message runsShort(ShortageRisk section, double rejectPercent) {
        BigDecimal rejects = toOneDecimal(rejectPercent);
        if (section.chance() <= RISK) {
            return BasketMessage.BOARDS_SELDOM_SHORT.of(
                    rejects, section.boards(), section.section(), section.chance(), section.spares());
        }
        return BasketMessage.BOARDS_MAY_RUN_SHORT.of(
                rejects,
                section.boards(),
                section.section(),
                section.chance(),
                section.sparesNeeded(),
                new Length(section.longestTicks()).mm(),
                RISK,
                section.spares());
    }

    /** To one decimal, without it when that is 0. */
    private static BigDecimal toOneDecimal(double number) {
        return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    }

    private static Basket.Order order(ShoppingAnswer.Order order, CurrencyUnit currency) {
        List<Basket.Line> lines = new ArrayList<>();
        for (ShoppingAnswer.BoardLine line : order.boards()) {
            BoardOffer offer = line.offer();
            lines.add(new Basket.Line(
                    offer.sold(),
                    new Length(offer.lengthTicks()),
                    line.packs() * offer.pack(),
                    offer.pack(),
                    BigDecimal.ONE,
                    Money.ofMinor(currency, offer.packPrice()),
                    Money.ofMinor(currency, line.packs() * offer.packPrice())));
        }
        for (ShoppingAnswer.GoodsLine line : order.goods()) {
            lines.add(new Basket.Line(
                    line.offer().item(),
                    Length.ZERO,
                    line.count(),
                    1,
                    line.offer().contains(),
                    Money.ofMinor(currency, line.offer().price()),
                    Money.ofMinor(currency, line.count() * line.offer().price())));
        }
        return new Basket.Order(
                order.supplier(),
                lines,
                Money.ofMinor(currency, order.value()),
                order.fetched(),
                Money.ofMinor(currency, order.delivery()),
                Money.ofMinor(currency, order.tax()),
                Money.ofMinor(currency, order.total()));
    }
}
