package borderwright.engine.buying;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Goods of one kind: how many of each offer cover the need at the least cost. Few offers, so a plain branch and bound
 * in whole numbers, the best value for its content first.
 */
final class Cover {
    /** Nodes after which the best cover so far is taken; reached only by contrived price lists. */
    private static final int MOST_NODES = 200_000;

    final GoodsNeed need;
    final List<GoodsOffer> offers;
    final int[] supplier;
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

    Cover(GoodsNeed need, List<GoodsOffer> offers, int[] supplier) {
        this.need = need;
        this.offers = List.copyOf(offers);
        this.supplier = supplier.clone();
        List<BigDecimal> numbers = new ArrayList<>();
        numbers.add(need.quantity());
        offers.forEach(o -> numbers.add(o.contains()));
        long[] whole = ShoppingCase.onOneScale(numbers);
        this.wanted = whole[0];
        this.content = Arrays.copyOfRange(whole, 1, whole.length);
    }

    boolean canBeMet() {
        int[] all = new int[offers.size()];
        for (int o = 0; o < all.length; o++) {
            all[o] = offers.get(o).available();
        }
        return reaches(all);
    }

    /** Whether so many of each offer cover the need. */
    boolean isMetBy(int[] counts) {
        return reaches(counts);
    }

    private boolean reaches(int[] available) {
        double sum = 0;
        for (int o = 0; o < available.length; o++) {
            sum += (double) available[o] * content[o];
        }
        return sum >= wanted;
    }

    /**
     * Counts of each offer at the least sum of costs; empty when the offers allowed cannot cover the need.
     *
     * @param costs cost of one of each offer, any unit
     * @param allowed whether each offer may be bought
     */
    int[] cheapest(long[] costs, boolean[] allowed) {
        cost = costs;
        limit = new int[offers.size()];
        for (int o = 0; o < limit.length; o++) {
            long most = Math.min(offers.get(o).available(), (wanted + content[o] - 1) / content[o]);
            limit[o] = allowed[o] ? (int) most : 0;
        }
        if (!reaches(limit)) {
            return new int[0];
        }
        Integer[] byRate = new Integer[limit.length];
        Arrays.setAll(byRate, o -> o);
        Arrays.sort(byRate, (a, b) -> Double.compare(costs[a] / (double) content[a], costs[b] / (double) content[b]));
        order = new int[byRate.length];
        for (int k = 0; k < order.length; k++) {
            order[k] = byRate[k];
        }
        count = new int[limit.length];
        best = new int[0];
        bestCost = Long.MAX_VALUE;
        nodes = 0;
        choose(0, wanted, 0);
        return best;
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
        double leastRate = cost[o] / (double) content[o];
        if (bestCost != Long.MAX_VALUE && spent + leastRate * left * (1 - 1e-9) > bestCost - 1) {
            return;
        }
        int most = (int) Math.min(limit[o], (left + content[o] - 1) / content[o]);
        for (int n = most; n >= 0; n--) {
            count[o] = n;
            choose(k + 1, left - n * content[o], spent + n * cost[o]);
        }
        count[o] = 0;
    }
}
