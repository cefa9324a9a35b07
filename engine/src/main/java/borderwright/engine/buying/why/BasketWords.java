package borderwright.engine.buying.why;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;

/** Why a basket is what it is, in sentences. */
public final class BasketWords {
    private static final int MOST_BOARDS = 4;

    private final LongFunction<String> money;
    private final LongFunction<String> length;

    /**
     * Words in a currency and a system of units.
     *
     * @param money how whole minor units are written
     * @param length how ticks are written, with their unit
     */
    public BasketWords(LongFunction<String> money, LongFunction<String> length) {
        this.money = money;
        this.length = length;
    }

    /** A sentence for each reason; without a basket why there is none. */
    public List<String> sentences(ShoppingAnswer answer, Explanation why) {
        List<String> reasons = new ArrayList<>(answer.reasons());
        if (answer.status() != ShoppingAnswer.Status.FOUND) {
            return reasons;
        }
        answer.alternatives().forEach(alone -> reasons.add(alone(alone, answer)));
        why.suppliers().forEach(supplier -> reasons.add(wins(supplier)));
        why.boards().stream().limit(MOST_BOARDS).forEach(board -> reasons.add(wins(board)));
        why.dearer().forEach(dearer -> reasons.add(dearer(dearer)));
        why.deliveries().forEach(delivery -> reasons.add(delivery(delivery, answer.proven())));
        why.spares().forEach(spare -> reasons.add(spare(spare)));
        for (ShoppingAnswer.Order order : answer.orders()) {
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                BoardOffer offer = line.offer();
                if (!offer.sold().equals(offer.section())) {
                    reasons.add("The " + board(offer) + " stands in for " + offer.section() + "; the difference counts "
                            + money.apply(line.packs() * offer.instead().counted()) + ", which nobody is paid.");
                }
            }
        }
        long kept = answer.kept();
        if (kept > 0) {
            reasons.add("Offcuts that are long enough to keep count " + money.apply(kept)
                    + " in favour of this basket, which nobody pays you; the price of it leaves that out.");
        }
        for (LaidBoard board : answer.boards()) {
            if (board.isHeldBack()) {
                reasons.add("A " + board.section() + " of " + length.apply(board.lengthTicks()) + " from "
                        + board.supplier() + " is held back until the last planter stands"
                        + (board.owned() ? "." : ": " + money.apply(board.price()) + " as priced."));
            }
        }
        if (why.savedByNesting() > 0) {
            reasons.add("Slanted ends that are cut into each other save " + money.apply(why.savedByNesting())
                    + ": keep to the order on the cutting sheets.");
        }
        return reasons;
    }

    private String alone(ShoppingAnswer.Alternative alone, ShoppingAnswer answer) {
        if (!alone.possible()) {
            return alone.supplier() + " alone cannot serve the list.";
        }
        if (alone.cost() == answer.cost()) {
            return "Everything from " + alone.supplier() + " alone costs as little as this basket.";
        }
        String atLeast = "Everything from " + alone.supplier() + " alone costs at least " + money.apply(alone.bound());
        return alone.cost() == Long.MAX_VALUE
                ? atLeast + "."
                : atLeast + "; the best found costs " + money.apply(alone.cost()) + ", "
                        + money.apply(alone.cost() - answer.cost()) + " more than this basket.";
    }

    private static String wins(Explanation.SupplierWins wins) {
        return wins.supplier() + " would win a place in the basket if all its prices were "
                + percent(1000 - wins.atThousandths(), 1000) + " % lower.";
    }

    private String wins(Explanation.BoardWins wins) {
        BoardOffer offer = wins.offer();
        return "The " + board(offer) + " would be bought if " + (offer.pack() > 1 ? "a pack" : "it") + " cost "
                + money.apply(wins.atPrice()) + " instead of " + money.apply(offer.packPrice())
                + (wins.sharp() ? "" : ", perhaps at less of a cut") + ".";
    }

    private String board(BoardOffer offer) {
        return (offer.section().isEmpty() ? "board" : offer.sold()) + " of " + length.apply(offer.lengthTicks())
                + (offer.pack() > 1 ? " in packs of " + offer.pack() : "")
                + (offer.hasBreak() ? " at the price from " + offer.least() + " on" : "")
                + (offer.supplier().isEmpty() ? "" : " from " + offer.supplier());
    }

    private String dearer(Explanation.DearerLength dearer) {
        String start = "The " + board(dearer.offer()) + " costs more for its length than the " + board(dearer.cheaper())
                + ", but without it the list ";
        if (!dearer.possible()) {
            return start + "cannot be served.";
        }
        long wasted = dearer.offcutWithoutTicks() - dearer.offcutTicks();
        return start + "costs " + money.apply(dearer.moreWithout()) + " more"
                + (wasted > 0 ? ", with " + length.apply(wasted) + " more of it left over." : ".");
    }

    private String delivery(Explanation.Delivery delivery, boolean proven) {
        String supplier = delivery.supplier().isEmpty() ? "the supplier" : delivery.supplier();
        if (delivery.fetched()) {
            return fetched(delivery, supplier);
        }
        String paid = "Delivery by " + supplier
                + (delivery.charge() == 0 ? " is free" : " costs " + money.apply(delivery.charge()) + " as priced");
        if (delivery.shortOfNext() != SupplierTerms.NEVER) {
            paid += "; it "
                    + (delivery.nextCharge() == 0 ? "is free" : "costs " + money.apply(delivery.nextCharge())) + " for "
                    + money.apply(delivery.shortOfNext()) + " more of goods"
                    + (proven ? ", which would cost more" : "");
        }
        DeliveryOption other = delivery.other();
        return paid
                + (other == null
                        ? "."
                        : ". Fetching it yourself would cost " + money.apply(other.charge())
                                + travels(other.longestTicks())
                                + (proven ? ", and a basket fetched costs no less." : "."));
    }

    private String fetched(Explanation.Delivery delivery, String supplier) {
        DeliveryOption other = delivery.other();
        return "The order from " + supplier + " is fetched"
                + (delivery.charge() == 0 ? "" : " for " + money.apply(delivery.charge()))
                + travels(delivery.longestTicks())
                + (other == null ? "." : "; its delivery would cost " + money.apply(other.charge()) + " as priced.");
    }

    private String travels(long longestTicks) {
        return longestTicks == DeliveryOption.ANY_LENGTH
                ? ""
                : ": nothing over " + length.apply(longestTicks) + " travels";
    }

    private String spare(Explanation.Spare spare) {
        return spare.boards() + " of the " + board(spare.offer())
                + (spare.boards() == 1 ? " is" : " are")
                + " bought but not cut, for a whole pack or to reach an order's mark: "
                + money.apply(spare.value()) + ".";
    }

    private static String percent(long part, long whole) {
        return BigDecimal.valueOf(100 * part)
                .divide(BigDecimal.valueOf(whole), 1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
