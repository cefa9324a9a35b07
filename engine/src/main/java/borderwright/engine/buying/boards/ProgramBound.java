package borderwright.engine.buying.boards;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * The best whole-number bound of a programme: at the present bounds of its counts, and at whatever counts, with the prices
 * that prove it.
 *
 * <p>See docs/decisions/0051.
 */
public final class ProgramBound {
    private final PatternPricing pricing;
    private final List<ModelColumn> fixed;
    private final long[] low;
    private final long[] high;
    private boolean isRoot = true;
    private long cost;
    private long total = BoundSum.NONE;
    private long[] prices = {};
    private long bestTotal = BoundSum.NONE;
    private long[] bestPrices = {};
    private final Map<Integer, PatternList.Worths> worths = new HashMap<>();

    /**
     * No bound yet.
     *
     * @param fixed columns of counts and extras
     * @param low least number of each; changed by its owner, who then calls {@link #startAnew}
     * @param high greatest number of each, as above
     */
    ProgramBound(PatternPricing pricing, List<ModelColumn> fixed, long[] low, long[] high) {
        this.pricing = pricing;
        this.fixed = fixed;
        this.low = low;
        this.high = high;
    }

    /** Forgets the bound of other bounds of counts. */
    void startAnew() {
        isRoot = true;
        for (int c = 0; c < low.length; c++) {
            isRoot &= low[c] == 0 && high[c] == fixed.get(c).most();
        }
        total = BoundSum.NONE;
        prices = new long[0];
        cost = 0;
    }

    /** Takes the bound of the last pricing where it is better. */
    void take() {
        long now = pricing.scaledBound(fixed, low, high);
        if (now > total && pricing.isFullScale()) {
            total = now;
            prices = pricing.copyOfPrices();
            if (isRoot && now > bestTotal) {
                bestTotal = now;
                bestPrices = prices;
                worths.clear();
            }
        }
        cost = Math.max(cost, pricing.wholeCost(now));
        if (now < Long.MAX_VALUE / 4) {
            cost = Math.max(cost, pricing.wholeCost(pricing.scaledDown()));
        }
    }

    /** Whether counts may be whatever they like. */
    boolean isRoot() {
        return isRoot;
    }

    /** No answer within the present bounds of counts costs less. */
    long cost() {
        return cost;
    }

    /** Whole row prices of the best bound at the present bounds of counts; empty when there is none. */
    long[] prices() {
        return prices;
    }

    /** Whole row prices of the best bound at whatever counts; empty when there is none. */
    long[] bestPrices() {
        return bestPrices;
    }

    /** What sizes of a part are worth for every length at {@link #bestPrices}. */
    PatternList.Worths worths(int s) {
        return worths.computeIfAbsent(s, k -> new PatternList.Worths());
    }

    /**
     * By how much an answer of at most {@code target} may cost more than the best bound at whatever counts, scaled; empty
     * where there is no such bound or the figure does not fit.
     */
    public OptionalLong gapTo(long target) {
        double gap = (double) target * pricing.scale - bestTotal;
        return bestPrices.length == 0 || gap > Math.scalb(1.0, 61)
                ? OptionalLong.empty()
                : OptionalLong.of(target * pricing.scale - bestTotal);
    }
}
