package borderwright.engine.buying.why;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.prices.BoardOffer;
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
     * The basket of an answer; without a basket an empty one whose reasons say why.
     *
     * @param why what is known of it beyond its cost
     * @param rejectPercent share of boards that turn out unusable, percent, at least 0 and below 100
     * @param format how lengths are written
     */
    public static Basket of(
            ShoppingAnswer answer, Explanation why, CurrencyUnit currency, double rejectPercent, LengthFormat format) {
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
                Money.ofMinor(currency, answer.cost() - answer.counted()),
                Money.ofMinor(currency, answer.bound() - answer.counted()),
                answer.proven(),
                unpriced,
                reasons(answer, why, currency, rejectPercent, format));
    }

    /** Why there is none; or why this one, and how likely its boards run short. */
    private static List<String> reasons(
            ShoppingAnswer answer, Explanation why, CurrencyUnit currency, double rejectPercent, LengthFormat format) {
        List<String> reasons = new BasketWords(
                        minor -> Money.ofMinor(currency, minor).toString(),
                        ticks -> format.length(new Length(ticks).mm()))
                .sentences(answer, why);
        if (rejectPercent > 0 && answer.status() == ShoppingAnswer.Status.FOUND) {
            for (ShortageRisk section : ShortageRisk.of(answer, rejectPercent / 100, RISK)) {
                reasons.add(runsShort(section, rejectPercent, format));
            }
        }
        return reasons;
    }

    private static String runsShort(ShortageRisk section, double rejectPercent, LengthFormat format) {
        String chance = "If " + figure(rejectPercent) + " in 100 boards turn out unusable, the " + section.boards()
                + " boards of " + section.section() + " run short with a chance of "
                + figure(100 * section.chance()) + " %";
        if (section.chance() <= RISK) {
            return chance + ", with the " + section.spares() + " spare.";
        }
        return chance + "; " + section.sparesWanted() + " spare boards of "
                + format.length(new Length(section.longestTicks()).mm()) + " bring it to "
                + figure(100 * RISK) + " % or less"
                + (section.spares() > 0 ? " (" + section.spares() + " are in the basket)." : ".");
    }

    /** To one decimal, without it when that is 0. */
    private static String figure(double number) {
        return BigDecimal.valueOf(number)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
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
                order.fetched(),
                Money.ofMinor(currency, order.delivery()),
                Money.ofMinor(currency, order.tax()),
                Money.ofMinor(currency, order.total()));
    }
}
