package borderwright.engine.buying.why;

import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.buying.suppliers.ShoppingCase;
import borderwright.engine.effort.Budget;
import borderwright.engine.prices.DeliveryOption;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.function.LongFunction;

/**
 * The break-even price of something that is not bought: the greatest one at which a basket with it costs less.
 *
 * <p>It is sought from below. The best basket with the thing for nothing is kept, and the price raised until that basket
 * costs as much as the one explained; then the best basket at one unit more is bought, and so on until none is cheaper. A
 * few searches settle one price, since every basket's cost is a straight line in it.
 */
final class BreakEvenSearch {
    private static final int MOST_PROBES = 30;
    private static final long PROBE_WORK = 100_000;

    private final ShoppingCase shopping;
    private final ShoppingAnswer answer;
    private final boolean isExact;
    private final Budget budget;

    /**
     * A search.
     *
     * @param shopping the list
     * @param answer the basket that is explained
     * @param isExact whether bounds of this list hold: no ends nest
     * @param budget for all searches together
     */
    BreakEvenSearch(ShoppingCase shopping, ShoppingAnswer answer, boolean isExact, Budget budget) {
        this.shopping = shopping;
        this.answer = answer;
        this.isExact = isExact;
        this.budget = budget;
    }

    boolean isExact() {
        return isExact;
    }

    /**
     * A price or share of prices.
     *
     * @param at greatest one at which a cheaper basket was found
     * @param sharp whether nothing is cheaper at one more
     */
    record BreakEven(long at, boolean sharp) {
        /** One up to which a cheaper basket was found, and of those beyond nothing is known. */
        private static BreakEven atLeast(long at) {
            return new BreakEven(at, false);
        }
    }

    /** Greatest value below {@code whole} at which a cheaper basket was found; empty when there is none or work ran out. */
    Optional<BreakEven> find(long whole, LongFunction<ShoppingProblem> changed) {
        long found = -1;
        for (int probe = 0; probe < MOST_PROBES; probe++) {
            if (budget.isSpent()) {
                return Optional.empty();
            }
            long at = found + 1;
            if (at >= whole) {
                // At its own price nothing is cheaper: that was proven before.
                boolean sharp = isExact;
                return Optional.of(new BreakEven(found, sharp));
            }
            ShoppingProblem then = changed.apply(at);
            ShoppingAnswer other = buy(then);
            if (other.status() != ShoppingAnswer.Status.FOUND || other.cost() >= answer.cost()) {
                boolean sharp =
                        isExact && other.status() == ShoppingAnswer.Status.FOUND && other.bound() >= answer.cost();
                return found < 0 ? Optional.empty() : Optional.of(new BreakEven(found, sharp));
            }
            found = breakEven(other, then, at, whole, changed);
        }
        return Optional.of(BreakEven.atLeast(found));
    }

    /** Greatest value up to which this very basket costs less than the one explained. */
    private long breakEven(
            ShoppingAnswer other, ShoppingProblem then, long from, long whole, LongFunction<ShoppingProblem> changed) {
        long low = from;
        long high = whole;
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (repriced(other, then, changed.apply(middle)) < answer.cost()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** What a basket found for {@code then} costs at the prices of {@code now}, minor units. */
    private long repriced(ShoppingAnswer other, ShoppingProblem then, ShoppingProblem now) {
        IdentityHashMap<Object, Long> price = new IdentityHashMap<>();
        for (int i = 0; i < then.boards().size(); i++) {
            price.put(then.boards().get(i), now.boards().get(i).packPrice());
        }
        for (int i = 0; i < then.goods().size(); i++) {
            price.put(then.goods().get(i), now.goods().get(i).price());
        }
        long sum = 0;
        for (ShoppingAnswer.Order order : other.orders()) {
            long value = 0;
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                value += line.packs() * price.getOrDefault(line.offer(), 0L);
                sum += line.packs() * line.offer().instead().counted();
            }
            for (ShoppingAnswer.GoodsLine line : order.goods()) {
                value += line.count() * price.getOrDefault(line.offer(), 0L);
            }
            long paid = leastPaid(order, value);
            if (paid == Long.MAX_VALUE) {
                return paid;
            }
            sum = Math.addExact(sum, paid);
        }
        return sum;
    }

    /** What an order of such a value costs by the cheapest way that carries it; {@link Long#MAX_VALUE} where none does. */
    private long leastPaid(ShoppingAnswer.Order order, long value) {
        int k = shopping.number(order.supplier());
        long paid = Long.MAX_VALUE;
        if (value < shopping.suppliers.get(k).minimumOrder()) {
            return paid;
        }
        for (DeliveryOption way : shopping.suppliers.get(k).ways()) {
            boolean carries = value >= way.fromValue()
                    && order.boards().stream().allMatch(line -> way.carries(line.offer()))
                    && order.goods().stream().allMatch(line -> way.carries(line.offer()));
            paid = carries ? Math.min(paid, shopping.paid(k, value, way)) : paid;
        }
        return paid;
    }

    /** Searches until a basket is cheaper than the one explained, none can be, or the work is spent. */
    ShoppingAnswer buy(ShoppingProblem changed) {
        boolean[] cheaper = {false};
        Budget part = new Budget(PROBE_WORK, () -> cheaper[0] || budget.isSpent());
        ShoppingAnswer found = Shopper.buy(changed, part, (cost, bound) -> cheaper[0] |= cost < answer.cost());
        // Even a search that ends in its first heuristics has read every piece.
        budget.spend(1000 * part.used() + 1000 + shopping.problem.demands().size());
        return found;
    }
}
