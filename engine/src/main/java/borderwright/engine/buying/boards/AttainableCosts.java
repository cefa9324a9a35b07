package borderwright.engine.buying.boards;

import borderwright.engine.effort.Budget;
import borderwright.engine.stock.MaterialBound;
import borderwright.engine.stock.PieceTable;
import borderwright.engine.stock.StockCase;
import java.util.Arrays;

/**
 * Which sums of board prices can serve the pieces at all: a bound of 41.20 is worth 42.00 where no boards add up to less,
 * or where those that do are too short together for all pieces.
 *
 * <p>For each sum up to the cost of a known answer the table holds the most length that so much buys, counting of each
 * board only what can be filled. Beyond the table's size only the greatest common divisor is used.
 */
final class AttainableCosts {
    private static final long MOST_SUMS = 1_000_000;

    private final long divisor;
    private final long[] mostLength;
    private final long total;

    /**
     * The sums of a case.
     *
     * @param stock boards and their costs
     * @param ceiling greatest sum of interest
     * @param budget for the tables; where it is spent only the common divisor is used
     */
    AttainableCosts(StockCase stock, long ceiling, Budget budget) {
        // Offcuts that are kept make sums that no boards cost.
        this.divisor = stock.keeps() ? 1 : Math.max(1, MaterialBound.costDivisor(stock));
        long most = stock.keeps() ? MOST_SUMS + 1 : ceiling / divisor;
        long sum = 0;
        for (int i = 0; i < stock.sizes(); i++) {
            sum = saturated(sum, stock.size(i), stock.demand(i));
        }
        this.total = sum;
        boolean tabled = most <= MOST_SUMS && (most + 1) * stock.boards() <= 20_000_000 && sum < Long.MAX_VALUE;
        long[] lengths = new long[tabled && !budget.isSpent() ? (int) most + 1 : 0];
        this.mostLength = lengths.length > 0 && fill(stock, lengths, budget) ? lengths : new long[0];
    }

    private boolean fill(StockCase stock, long[] lengths, Budget budget) {
        long free = 0;
        Arrays.fill(lengths, -1);
        long[] filled = filled(stock, budget);
        for (int j = 0; j < stock.boards(); j++) {
            boolean isFree = stock.cost(j) == 0 && stock.available(j) > 0;
            free = isFree ? saturated(free, filled[j], Math.min(stock.available(j), stock.pieces())) : free;
        }
        lengths[0] = free;
        for (int j = 0; j < stock.boards() && budget.spend(lengths.length); j++) {
            if (stock.available(j) >= stock.pack(j) && stock.cost(j) > 0) {
                int step = (int) Math.min(stock.cost(j) / divisor, Integer.MAX_VALUE);
                for (int at = step; at >= 0 && at < lengths.length; at++) {
                    long before = lengths[at - step];
                    if (before >= 0) {
                        lengths[at] = Math.max(lengths[at], saturated(before, filled[j], stock.pack(j)));
                    }
                }
            }
        }
        return !budget.isSpent();
    }

    /** a + b x c, or the greatest long where it is more. */
    private static long saturated(long a, long b, long c) {
        long product = Math.multiplyHigh(b, c) == 0 && b * c >= 0 ? b * c : Long.MAX_VALUE;
        return a > Long.MAX_VALUE - product ? Long.MAX_VALUE : a + product;
    }

    /** Of each board the greatest length that pieces can fill. */
    private static long[] filled(StockCase stock, Budget budget) {
        long[] filled = new long[stock.boards()];
        long work = stock.sizes() * stock.longest();
        PieceTable table = null;
        if (stock.sizes() > 0 && work <= 20_000_000 && stock.longest() <= PieceTable.MOST_PLAIN) {
            table = PieceTable.of(stock.copyOfSizes(), stock.longest());
            table.solve(stock.copyOfSizes(), stock.copyOfDemand(), budget);
        }
        for (int j = 0; j < filled.length; j++) {
            boolean there = stock.available(j) > 0;
            filled[j] = !there || table == null || !table.isExact() ? stock.capacity(j) : table.best(stock.capacity(j));
        }
        return filled;
    }

    private boolean serves(int sum) {
        return mostLength[sum] >= total;
    }

    /** The least sum of at least {@code bound} that can serve. */
    long up(long bound) {
        long whole = Math.floorDiv(bound + divisor - 1, divisor);
        for (long at = Math.max(0, whole); at < mostLength.length; at++) {
            if (serves((int) at)) {
                return at * divisor;
            }
        }
        return Math.max(whole, mostLength.length) * divisor;
    }

    /** The greatest sum below {@code cost} that can serve; -1 when there is none. */
    long below(long cost) {
        long whole = Math.floorDiv(cost - 1, divisor);
        if (whole >= mostLength.length) {
            return whole * divisor;
        }
        for (long at = whole; at >= 0; at--) {
            if (serves((int) at)) {
                return at * divisor;
            }
        }
        return -1;
    }
}
