package borderwright.engine.buying;

import borderwright.engine.stock.MaterialBound;
import borderwright.engine.stock.StockCase;
import java.util.BitSet;

/**
 * Which sums of board prices there are at all: a bound of 41.20 is worth 42.00 where no boards add up to less. An exact
 * table up to the cost of a known answer; beyond its size only the greatest common divisor is used.
 */
final class Reach {
    private static final long MOST_SUMS = 2_000_000;

    private final long divisor;
    private final BitSet sums = new BitSet();
    private final boolean tabled;

    /**
     * The sums of a case.
     *
     * @param stock boards and their costs
     * @param ceiling greatest sum of interest
     */
    Reach(StockCase stock, long ceiling) {
        this.divisor = Math.max(1, MaterialBound.costDivisor(stock));
        long most = ceiling / divisor;
        this.tabled = most <= MOST_SUMS && most * stock.boards() <= 40_000_000;
        if (tabled) {
            sums.set(0);
            for (int j = 0; j < stock.boards(); j++) {
                if (stock.available(j) >= stock.pack(j) && stock.cost(j) > 0) {
                    addAll((int) (stock.cost(j) / divisor), (int) most);
                }
            }
        }
    }

    private void addAll(int step, int most) {
        for (int at = sums.nextSetBit(0); at >= 0 && at + step <= most; at = sums.nextSetBit(at + 1)) {
            sums.set(at + step);
        }
    }

    /** The least sum of at least {@code bound}. */
    long up(long bound) {
        long whole = Math.floorDiv(bound + divisor - 1, divisor);
        if (!tabled || whole > Integer.MAX_VALUE) {
            return whole * divisor;
        }
        int next = sums.nextSetBit((int) Math.max(0, whole));
        return next < 0 ? Math.max(bound, whole * divisor) : next * divisor;
    }

    /** The greatest sum below {@code cost}; -1 when there is none. */
    long below(long cost) {
        long whole = Math.floorDiv(cost - 1, divisor);
        if (!tabled || whole > Integer.MAX_VALUE || whole < 0) {
            return whole * divisor;
        }
        int last = sums.previousSetBit((int) whole);
        return last < 0 ? -1 : last * divisor;
    }
}
