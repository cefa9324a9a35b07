package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.prices.GoodsOffer;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Goods of one kind: how many of each offer cover the need at the least cost. Few offers, so a plain branch and bound
 * in whole numbers, the best value for its content first.
 */
final class GoodsCover {
    /** Nodes after which the best cover so far is taken and a weaker bound; reached only by contrived price lists. */
    private static final int MOST_NODES = 200_000;

    final GoodsNeed need;
    final List<Offer> offers;
    /** How much is needed, on the scale of the offers' content. */
    final long wanted;

    private List<Option> byRate = List.of();
    private long bestCost;
    private int nodes;

    /**
     * An offer that covers the need in part.
     *
     * @param terms as quoted
     * @param supplier number of its supplier
     * @param content how much is in one, on one whole scale with the need
     */
    record Offer(GoodsOffer terms, int supplier, long content) {
        /** How many hold so much; so much is above 0. */
        private long pieces(long much) {
            return (much - 1) / content + 1;
        }

        /** The same, or as many as the price holds from where these are more. */
        private long enough(long much) {
            return Math.max(pieces(much), terms.least());
        }
    }

    /** An offer at its cost in the search, and how many of it are taken. */
    private static final class Option {
        private final int offer;
        private final Offer is;
        private final long cost;
        private final int limit;
        private int count;
        private int best;

        Option(int offer, Offer is, long cost, int limit) {
            this.offer = offer;
            this.is = is;
            this.cost = cost;
            this.limit = limit;
        }

        private static int byRate(Option a, Option b) {
            return compareProducts(a.cost, b.is.content, b.cost, a.is.content);
        }
    }

    /**
     * A need and what covers it.
     *
     * @param need what is needed
     * @param terms of what covers it, each as many as its price holds from at least
     * @param supplier of each offer
     */
    GoodsCover(GoodsNeed need, List<GoodsOffer> terms, int[] supplier) {
        this.need = need;
        List<BigDecimal> numbers = new ArrayList<>();
        numbers.add(need.quantity().max(BigDecimal.ZERO));
        terms.forEach(o -> numbers.add(o.contains()));
        long[] whole = ShoppingCase.onOneScale(numbers);
        this.wanted = whole[0];
        this.offers = IntStream.range(0, terms.size())
                .mapToObj(o -> new Offer(terms.get(o), supplier[o], whole[o + 1]))
                .toList();
    }

    boolean canBeMet() {
        return reaches(
                offers.stream().mapToInt(offer -> offer.terms.available()).toArray());
    }

    /** Whether so many of each offer cover the need, and are none or no fewer than its price holds from. */
    boolean isMetBy(int[] counts) {
        for (int o = 0; o < counts.length; o++) {
            if (counts[o] > 0 && counts[o] < offers.get(o).terms.least()) {
                return false;
            }
        }
        return reaches(counts);
    }

    /** In whole numbers, whatever their size: what is still wanted never grows, so nothing runs over. */
    private boolean reaches(int[] counts) {
        long left = wanted;
        for (int o = 0; o < counts.length && left > 0; o++) {
            Offer offer = offers.get(o);
            left = counts[o] >= offer.pieces(left) ? 0 : left - counts[o] * offer.content;
        }
        return left <= 0;
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
        int[] limit = new int[offers.size()];
        List<Option> options = new ArrayList<>();
        for (int o = 0; o < limit.length; o++) {
            Offer offer = offers.get(o);
            long most = wanted <= 0 ? 0 : Math.min(offer.terms.available(), offer.enough(wanted));
            limit[o] = allowed[o] ? (int) most : 0;
            options.add(new Option(o, offer, costs[o], limit[o]));
        }
        int[] counts = new int[limit.length];
        if (!reaches(limit)) {
            return new Choice(counts, 0);
        }
        options.sort(Option::byRate);
        byRate = options;
        bestCost = Long.MAX_VALUE;
        nodes = 0;
        choose(0, wanted, 0);
        options.forEach(option -> counts[option.offer] = option.best);
        return new Choice(counts, nodes <= MOST_NODES ? bestCost : leastRateCost());
    }

    /** What the need costs where any part of the cheapest offer can be had, rounded down; the limits only add to it. */
    private long leastRateCost() {
        Option cheapest = byRate.get(0);
        BigInteger whole = BigInteger.valueOf(wanted).multiply(BigInteger.valueOf(cheapest.cost));
        return whole.divide(BigInteger.valueOf(cheapest.is.content)).longValueExact();
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
                byRate.forEach(option -> option.best = option.count);
            }
            return;
        }
        if (k == byRate.size() || nodes++ > MOST_NODES) {
            return;
        }
        Option option = byRate.get(k);
        long content = option.is.content;
        long toSpend = bestCost - 1 - spent;
        if (toSpend < 0 || compareProducts(option.cost, left, toSpend, content) > 0) {
            return;
        }
        int most = (int) Math.min(option.limit, option.is.enough(left));
        int least = option.is.terms.least();
        for (int n = most; n >= 0; n = n > least || n == 0 ? n - 1 : 0) {
            option.count = n;
            choose(k + 1, left - n * content, spent + n * option.cost);
        }
        option.count = 0;
    }
}
