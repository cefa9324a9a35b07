package borderwright.engine.buying.list;

import borderwright.engine.message.Message;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.GoodsOffer;
import java.util.List;

/**
 * What to buy, how every board is cut, and how good that is known to be.
 *
 * @param status whether there is a basket
 * @param cost what is paid in all, and what stand-ins count, less what offcuts are worth, minor units; 0 without a basket
 * @param bound no basket that serves the list costs less, minor units
 * @param orders one for each supplier that is bought from, in the order of the problem's boards and goods
 * @param boards every board that is cut into
 * @param unpriced goods that no supplier prices or can give in full; they are not in the cost
 * @param alternatives each supplier alone, where there are several
 * @param reasons why there is no basket, the main reason first; none where there is one
 */
public record ShoppingAnswer(
        Status status,
        long cost,
        long bound,
        List<Order> orders,
        List<LaidBoard> boards,
        List<GoodsNeed> unpriced,
        List<Alternative> alternatives,
        List<Message> reasons) {
    public ShoppingAnswer {
        orders = List.copyOf(orders);
        boards = List.copyOf(boards);
        unpriced = List.copyOf(unpriced);
        alternatives = List.copyOf(alternatives);
        reasons = List.copyOf(reasons);
    }

    /**
     * Everything from one supplier alone.
     *
     * @param supplier its name
     * @param possible whether it can serve the list at all
     * @param cost cost of the best such basket found, minor units; {@link Long#MAX_VALUE} when none was looked for or found
     * @param bound no such basket costs less, minor units
     */
    public record Alternative(String supplier, boolean possible, long cost, long bound) {
        /** The same with another cost; {@link Long#MAX_VALUE} where that basket is not to be had. */
        public Alternative costing(long other) {
            return new Alternative(supplier, possible, other, bound);
        }
    }

    /** Whether there is a basket. */
    public enum Status {
        /** There is one, and boards give every piece. */
        FOUND,
        /** There is none: the boards to be had cannot give the pieces. */
        IMPOSSIBLE,
        /** None was found within the budget, and none was shown to be impossible. */
        STOPPED
    }

    /** What offcuts that are kept count, minor units: taken off the cost, paid by nobody. */
    public long kept() {
        long standIns = 0;
        for (Order order : orders) {
            for (BoardLine line : order.boards()) {
                standIns += line.packs() * line.offer().instead().counted();
            }
        }
        return standIns - counted();
    }

    /** What boards that stand in for others count, less what offcuts are worth, minor units: in the cost, paid to nobody. */
    public long counted() {
        return cost - orders.stream().mapToLong(Order::total).sum();
    }

    /** Whether nothing can be cheaper. */
    public boolean proven() {
        return status == Status.FOUND && bound >= cost;
    }

    /** The same purchase with its boards cut otherwise. */
    public ShoppingAnswer withBoards(List<LaidBoard> others) {
        return new ShoppingAnswer(status, cost, bound, orders, others, unpriced, alternatives, reasons);
    }

    /** The same answer with other figures for each supplier alone. */
    public ShoppingAnswer withAlternatives(List<Alternative> others) {
        return new ShoppingAnswer(status, cost, bound, orders, boards, unpriced, others, reasons);
    }

    /** The same answer with a bound that is known otherwise; never above the cost. */
    public ShoppingAnswer withBound(long other) {
        return new ShoppingAnswer(status, cost, Math.min(other, cost), orders, boards, unpriced, alternatives, reasons);
    }

    /** (cost - bound) / cost; 0 when proven. */
    public double gap() {
        return cost == 0 ? 0 : Math.max(0, (cost - bound) / (double) cost);
    }

    /**
     * An order to one supplier, minor units.
     *
     * @param supplier its name
     * @param boards packs of boards
     * @param goods everything else
     * @param value boards and goods as priced
     * @param delivery delivery as priced, or what fetching it costs
     * @param tax tax added, rounded half up to a minor unit for the whole order
     * @param fetched whether the buyer fetches it; else it is delivered
     */
    public record Order(
            String supplier,
            List<BoardLine> boards,
            List<GoodsLine> goods,
            long value,
            long delivery,
            long tax,
            boolean fetched) {
        public Order {
            boards = List.copyOf(boards);
            goods = List.copyOf(goods);
        }

        public long total() {
            return value + delivery + tax;
        }
    }

    /**
     * Packs of one board on an order.
     *
     * @param offer what is bought
     * @param packs how many packs
     */
    public record BoardLine(BoardOffer offer, int packs) {}

    /**
     * Goods of one kind on an order.
     *
     * @param offer what is bought
     * @param count how many
     */
    public record GoodsLine(GoodsOffer offer, int count) {}

    public static Builder builder(Status status) {
        return new Builder(status);
    }

    /** The parts of an answer, set one by one; what is left out is nought or empty. */
    public static final class Builder {
        private final Status status;
        private long cost;
        private long bound;
        private List<Order> orders = List.of();
        private List<LaidBoard> boards = List.of();
        private List<GoodsNeed> unpriced = List.of();
        private List<Alternative> alternatives = List.of();
        private List<Message> reasons = List.of();

        private Builder(Status status) {
            this.status = status;
        }

        public Builder cost(long set) {
            cost = set;
            return this;
        }

        public Builder bound(long set) {
            bound = set;
            return this;
        }

        public Builder orders(List<Order> set) {
            orders = set;
            return this;
        }

        public Builder boards(List<LaidBoard> set) {
            boards = set;
            return this;
        }

        public Builder unpriced(List<GoodsNeed> set) {
            unpriced = set;
            return this;
        }

        public Builder alternatives(List<Alternative> set) {
            alternatives = set;
            return this;
        }

        public Builder reasons(List<Message> set) {
            reasons = set;
            return this;
        }

        public ShoppingAnswer build() {
            return new ShoppingAnswer(status, cost, bound, orders, boards, unpriced, alternatives, reasons);
        }
    }
}
