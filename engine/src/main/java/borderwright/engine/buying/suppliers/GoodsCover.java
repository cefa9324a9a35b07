package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.prices.GoodsOffer;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Goods of one kind: how many of each offer cover the need at the least cost. Few offers, so a plain branch and bound
 * in whole numbers, the best value for its content first.
 */
final class GoodsCover {
    /** Nodes after which the best cover so far is taken and a weaker bound; reached only by contrived price lists. */
    private static final int MOST_NODES = 200_000;

    final GoodsNeed need;
    final List<GoodsOffer> offers;
    final int[] supplier;
    private final int[] available;
    /** How much is needed, and how much is in one of each offer, on one whole scale. */
    final long wanted;

    final long[] content;

    private long[] cost = {};
    private int[] limit = {};
    private int[] order = {};
    private int[] count = {};
    private int[] best = {};
    private long bestCost;
    private int nodes;

    /**
     * A need and what covers it.
     *
     * @param need what is needed
     * @param offers what covers it, each as many as its price holds from at least
     * @param supplier of each offer
     */
    GoodsCover(GoodsNeed need, List<GoodsOffer> offers, int[] supplier) {
        this.need = need;
        this.available = offers.stream().mapToInt(GoodsOffer::available).toArray();
        this.offers = List.copyOf(offers);
        this.supplier = supplier.clone();
        List<BigDecimal> numbers = new ArrayList<>();
        numbers.add(need.quantity().max(BigDecimal.ZERO));
        offers.forEach(o -> numbers.add(o.contains()));
        long[] whole = ShoppingCase.onOneScale(numbers);
        this.wanted = whole[0];
        this.content = Arrays.copyOfRange(whole, 1, whole.length);
    }

    boolean canBeMet() {
        return reaches(available);
    }

    /** Whether so many of each offer cover the need, and are none or no fewer than its price holds from. */
    boolean isMetBy(int[] counts) {
        for (int o = 0; o < counts.length; o++) {
            if (counts[o] > 0 && counts[o] < offers.get(o).least()) {
                return false;
            }
        }
        return reaches(counts);
    }

    /** In whole numbers, whatever their size: what is still wanted never grows, so nothing runs over. */
    private boolean reaches(int[] counts) {
        long left = wanted;
        for (int o = 0; o < counts.length && left > 0; o++) {
            left = counts[o] >= pieces(left, o) ? 0 : left - counts[o] * content[o];
        }
        return left <= 0;
    }

    /** How many of an offer hold so much; so much is above 0. */
    private long pieces(long much, int o) {
        return (much - 1) / content[o] + 1;
    }

    /** The same, or as many as the price holds from where these are more. */
    private long enough(long much, int o) {
        return Math.max(pieces(much, o), offers.get(o).least());
    }

    /** How many of each offer are bought. */
    static final class Choice {
        private final int[] counts;
        private final long least;

        Choice(int[] counts, long least) {
            this.counts = counts;
            this.least = least;
        }

        /** Count of each offer; all 0 where the offers allowed cannot cover the need. */
        int[] counts() {
            return counts.clone();
        }

        /** No cover costs less; what {@link #counts} cost unless the search was given up. */
        long least() {
            return least;
        }
    }

    /**
     * Counts of each offer at the least sum of costs.
     *
     * @param costs cost of one of each offer, any unit
     * @param allowed whether each offer may be bought
     */
    Choice cheapest(long[] costs, boolean[] allowed) {
        cost = costs;
        limit = new int[offers.size()];
        for (int o = 0; o < limit.length; o++) {
            long most = wanted <= 0 ? 0 : Math.min(available[o], enough(wanted, o));
            limit[o] = allowed[o] ? (int) most : 0;
        }
        if (!reaches(limit)) {
            return new Choice(new int[limit.length], 0);
        }
        Integer[] byRate = new Integer[limit.length];
        Arrays.setAll(byRate, o -> o);
        Arrays.sort(byRate, (a, b) -> compareProducts(costs[a], content[b], costs[b], content[a]));
        order = new int[byRate.length];
        for (int k = 0; k < order.length; k++) {
            order[k] = byRate[k];
        }
        count = new int[limit.length];
        best = new int[limit.length];
        bestCost = Long.MAX_VALUE;
        nodes = 0;
        choose(0, wanted, 0);
        return new Choice(best, nodes <= MOST_NODES ? bestCost : leastRateCost());
    }

    /** What the need costs where any part of the cheapest offer can be had, rounded down; the limits only add to it. */
    private long leastRateCost() {
        BigInteger whole = BigInteger.valueOf(wanted).multiply(BigInteger.valueOf(cost[order[0]]));
        return whole.divide(BigInteger.valueOf(content[order[0]])).longValueExact();
    }

    /** Compares a x b with c x d, all at least 0, whatever their size. */
    private static int compareProducts(long a, long b, long c, long d) {
        int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
        return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
    }

    private void choose(int k, long left, long spent) {
        if (left <= 0) {
            if (spent < bestCost) {
                bestCost = spent;
                best = count.clone();
            }
            return;
        }
        if (k == order.length || nodes++ > MOST_NODES) {
            return;
        }
        int o = order[k];
        long toSpend = bestCost - 1 - spent;
        if (toSpend < 0 || compareProducts(cost[o], left, toSpend, content[o]) > 0) {
            return;
        }
        int most = (int) Math.min(limit[o], enough(left, o));
        int least = offers.get(o).least();
        for (int n = most; n >= 0; n = n > least || n == 0 ? n - 1 : 0) {
            count[o] = n;
            choose(k + 1, left - n * content[o], spent + n * cost[o]);
        }
        count[o] = 0;
    }
}
