package borderwright.engine.buying.why;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.MinorUnit;
import borderwright.engine.prices.SupplierTerms;
import java.util.ArrayList;
import java.util.List;

/** Why a basket is what it is: a message for each reason. */
public final class BasketReasons {
    private static final int MOST_BOARDS = 4;

    private final ShoppingAnswer answer;
    private final MinorUnit unit;
    private final List<Message> reasons = new ArrayList<>();

    private BasketReasons(ShoppingAnswer answer, MinorUnit unit) {
        this.answer = answer;
        this.unit = unit;
    }

    /**
     * The reasons for a basket; without a basket why there is none.
     *
     * @param why what is known of it beyond its cost
     * @param unit of all money of the answer
     */
    public static List<Message> of(ShoppingAnswer answer, Explanation why, MinorUnit unit) {
        return answer.status() == ShoppingAnswer.Status.FOUND
                ? new BasketReasons(answer, unit).reasons(why)
                : answer.reasons();
    }

    private List<Message> reasons(Explanation why) {
        answer.alternatives().forEach(this::alone);
        why.suppliers().forEach(this::wouldWin);
        why.boards().stream().limit(MOST_BOARDS).forEach(this::wouldWin);
        why.dearer().forEach(this::dearer);
        why.deliveries().forEach(this::delivery);
        why.spares().forEach(this::spare);
        standIns();
        if (answer.kept() > 0) {
            reasons.add(BasketMessage.OFFCUTS_COUNT.of(unit.money(answer.kept())));
        }
        keptWhole();
        if (why.savedByNesting() > 0) {
            reasons.add(BasketMessage.NESTING_SAVES.of(unit.money(why.savedByNesting())));
        }
        return reasons;
    }

    private void alone(ShoppingAnswer.Alternative alone) {
        Message supplier = supplier(alone.supplier());
        if (!alone.possible()) {
            reasons.add(BasketMessage.ALONE_IMPOSSIBLE.of(supplier));
        } else if (answer.orders().stream().allMatch(o -> o.supplier().equals(alone.supplier()))) {
            reasons.add(BasketMessage.BASKET_OF_ONE_SUPPLIER.of(supplier));
        } else if (alone.cost() == answer.cost()) {
            reasons.add(BasketMessage.ALONE_COSTS_THE_SAME.of(supplier));
        } else if (alone.cost() == Long.MAX_VALUE) {
            reasons.add(BasketMessage.ALONE_AT_LEAST.of(supplier, unit.money(alone.bound())));
        } else if (alone.bound() >= alone.cost()) {
            reasons.add(BasketMessage.ALONE_COSTS_MORE.of(
                    supplier, unit.money(alone.cost()), unit.money(alone.cost() - answer.cost())));
        } else {
            reasons.add(BasketMessage.ALONE_BEST_FOUND.of(
                    supplier,
                    unit.money(alone.cost()),
                    unit.money(alone.cost() - answer.cost()),
                    unit.money(alone.bound())));
        }
    }

    private void wouldWin(Explanation.SupplierWins wins) {
        reasons.add(
                BasketMessage.SUPPLIER_WOULD_WIN.of(supplier(wins.supplier()), (1000 - wins.atThousandths()) / 1000.0));
    }

    private void wouldWin(Explanation.BoardWins wins) {
        BoardOffer offer = wins.offer();
        reasons.add(BasketMessage.BOARD_WOULD_WIN.of(
                board(offer),
                unit.money(wins.atPrice()),
                offer.pack(),
                unit.money(offer.packPrice()),
                wins.sharp() ? "yes" : "no"));
    }

    private void dearer(Explanation.DearerLength dearer) {
        Message board = board(dearer.offer());
        Message cheaper = board(dearer.cheaper());
        long wasted = dearer.offcutWithoutTicks() - dearer.offcutTicks();
        if (!dearer.possible()) {
            reasons.add(BasketMessage.DEARER_LENGTH_NEEDED.of(board, cheaper));
        } else if (wasted <= 0) {
            reasons.add(BasketMessage.DEARER_LENGTH_SAVES.of(board, cheaper, unit.money(dearer.moreWithout())));
        } else {
            reasons.add(BasketMessage.DEARER_LENGTH_SAVES_WASTE.of(
                    board, cheaper, unit.money(dearer.moreWithout()), mm(wasted)));
        }
    }

    private void delivery(Explanation.Delivery delivery) {
        Message supplier = supplier(delivery.supplier());
        if (delivery.fetched()) {
            fetched(delivery, supplier);
            return;
        }
        reasons.add(
                delivery.charge() == 0
                        ? BasketMessage.DELIVERY_FREE.of(supplier)
                        : BasketMessage.DELIVERY_COSTS.of(supplier, unit.money(delivery.charge())));
        if (delivery.shortOfNext() != SupplierTerms.NEVER) {
            reasons.add(
                    delivery.nextCharge() == 0
                            ? BasketMessage.DELIVERY_FREE_FROM.of(
                                    supplier, unit.money(delivery.shortOfNext()), proven())
                            : BasketMessage.DELIVERY_CHEAPER_FROM.of(
                                    supplier,
                                    unit.money(delivery.shortOfNext()),
                                    unit.money(delivery.nextCharge()),
                                    proven()));
        }
        DeliveryOption other = delivery.other();
        if (other != null) {
            reasons.add(BasketMessage.FETCHING_INSTEAD.of(supplier, unit.money(other.charge()), proven()));
            fetchingLimit(supplier, other.longestTicks());
        }
    }

    private void fetched(Explanation.Delivery delivery, Message supplier) {
        reasons.add(
                delivery.charge() == 0
                        ? BasketMessage.ORDER_FETCHED_FREE.of(supplier)
                        : BasketMessage.ORDER_FETCHED.of(supplier, unit.money(delivery.charge())));
        fetchingLimit(supplier, delivery.longestTicks());
        DeliveryOption other = delivery.other();
        if (other != null) {
            reasons.add(BasketMessage.DELIVERY_INSTEAD.of(supplier, unit.money(other.charge())));
        }
    }

    private void fetchingLimit(Message supplier, long longestTicks) {
        if (longestTicks != DeliveryOption.ANY_LENGTH) {
            reasons.add(BasketMessage.FETCHING_LIMIT.of(supplier, mm(longestTicks)));
        }
    }

    private void spare(Explanation.Spare spare) {
        reasons.add(BasketMessage.BOARDS_NOT_CUT.of(board(spare.offer()), spare.boards(), unit.money(spare.value())));
    }

    private void standIns() {
        for (ShoppingAnswer.Order order : answer.orders()) {
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                BoardOffer offer = line.offer();
                if (!offer.sold().equals(offer.section())) {
                    reasons.add(BasketMessage.STANDS_IN.of(
                            board(offer),
                            offer.section(),
                            unit.money(line.packs() * offer.instead().counted())));
                }
            }
        }
    }

    private void keptWhole() {
        for (LaidBoard board : answer.boards()) {
            if (board.isHeldBack()) {
                reasons.add(
                        board.owned()
                                ? BasketMessage.OWN_BOARD_KEPT_WHOLE.of(
                                        mm(board.lengthTicks()), board.section(), board.supplier())
                                : BasketMessage.BOARD_KEPT_WHOLE.of(
                                        ofSupplier(
                                                BasketMessage.BOARD_ON_OFFER.of(
                                                        mm(board.lengthTicks()), section(board.section()), 1, 1),
                                                board.supplier()),
                                        unit.money(board.price())));
            }
        }
    }

    private static Message board(BoardOffer offer) {
        return ofSupplier(
                BasketMessage.BOARD_ON_OFFER.of(
                        mm(offer.lengthTicks()),
                        section(offer.sold()),
                        offer.pack(),
                        offer.hasBreak() ? offer.least() : 1),
                offer.supplier());
    }

    private static Message ofSupplier(Message board, String supplier) {
        return supplier.isEmpty() ? board : BasketMessage.BOARD_OF_SUPPLIER.of(board, supplier);
    }

    private static Message section(String name) {
        return name.isEmpty() ? BasketMessage.NAMELESS_SECTION.of() : BasketMessage.PLAIN_NAME.of(name);
    }

    private static Message supplier(String name) {
        return name.isEmpty() ? BasketMessage.NAMELESS_SUPPLIER.of() : BasketMessage.PLAIN_NAME.of(name);
    }

    private String proven() {
        return answer.proven() ? "yes" : "no";
    }

    private static double mm(long ticks) {
        return new Length(ticks).mm();
    }
}
