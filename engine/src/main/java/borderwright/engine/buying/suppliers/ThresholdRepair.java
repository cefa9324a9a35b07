package borderwright.engine.buying.suppliers;

import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Brings orders to their thresholds by taking boards from another supplier, or longer ones: the exchange that costs least for
 * what it adds to the order comes first. A heuristic, so that the first baskets are near the best.
 */
final class ThresholdRepair {
    private static final int MOST_EXCHANGES = 1000;

    private final ShoppingCase shopping;
    private final SupplierCase c;
    private final long[] value;
    private final List<Cut> cuts = new ArrayList<>();
    private final long[][] left;

    /** Boards that are cut to one pattern. */
    private static final class Cut {
        private final int part;
        private final CuttingPattern pattern;
        private final long used;
        private int times;

        Cut(int part, CuttingPattern pattern, long used, int times) {
            this.part = part;
            this.pattern = pattern;
            this.used = used;
            this.times = times;
        }
    }

    /** Some boards of a cut on another type of board. */
    private record Exchange(Cut from, int board, int times, double rate) {}

    private ThresholdRepair(ShoppingCase shopping, SupplierCase c, Purchase from) {
        this.shopping = shopping;
        this.c = c;
        this.value = from.value.clone();
        this.left = new long[shopping.sections.size()][];
        for (int s = 0; s < left.length; s++) {
            ShoppingSection section = shopping.sections.get(s);
            Packing packing = from.packings.get(s);
            int[] used = packing.boards(section.stock);
            left[s] = new long[used.length];
            for (int j = 0; j < used.length; j++) {
                left[s][j] = section.stock.available(j) - (long) used[j];
            }
            for (int p = 0; p < packing.kinds(); p++) {
                CuttingPattern pattern = packing.pattern(p);
                cuts.add(new Cut(s, pattern, pattern.used(section.stock), packing.times(p)));
            }
        }
    }

    /** A purchase whose orders reach the thresholds of a case, with the same pieces on each board; null where none was found. */
    static @Nullable Purchase of(ShoppingCase shopping, SupplierCase c, Purchase from) {
        ThresholdRepair shift = new ThresholdRepair(shopping, c, from);
        return shift.reachesThresholds() ? shift.purchase(from) : null;
    }

    private boolean reachesThresholds() {
        for (int n = 0; n < MOST_EXCHANGES; n++) {
            int k = furthest();
            if (k < 0) {
                return true;
            }
            Exchange best = null;
            for (Cut cut : cuts) {
                for (int j = 0; cut.times > 0 && j < left[cut.part].length; j++) {
                    Exchange exchange = exchange(cut, j, k);
                    best = exchange != null && (best == null || exchange.rate < best.rate) ? exchange : best;
                }
            }
            if (best == null) {
                return false;
            }
            carryOut(best);
        }
        return false;
    }

    private long missing(int k) {
        return c.leastValue(k) - value[k];
    }

    /** The order that misses its threshold by most; -1 when none does. */
    private int furthest() {
        int furthest = -1;
        for (int k = 0; k < value.length; k++) {
            if (missing(k) > 0 && (furthest < 0 || missing(k) > missing(furthest))) {
                furthest = k;
            }
        }
        return furthest;
    }

    /** What a cut's boards add to order {@code k} as boards {@code j}; null where they add nothing or may not. */
    private @Nullable Exchange exchange(Cut cut, int j, int k) {
        ShoppingSection section = shopping.sections.get(cut.part);
        StockCase stock = section.stock;
        int before = cut.pattern.board();
        if (section.supplier(j) != k
                || !c.allows(section, j)
                || stock.isPacked(j)
                || stock.isPacked(before)
                || stock.capacity(j) < cut.used) {
            return null;
        }
        int donor = section.supplier(before);
        long gain = section.value(j) - (donor == k ? section.value(before) : 0);
        long times = Math.min(cut.times, left[cut.part][j]);
        if (donor != k && donor != ShoppingCase.SHED && c.leastValue(donor) > 0 && section.value(before) > 0) {
            times = Math.min(times, -missing(donor) / section.value(before));
        }
        if (gain <= 0 || times <= 0) {
            return null;
        }
        times = Math.min(times, (missing(k) + gain - 1) / gain);
        double extra = (double) stock.cost(j) - stock.cost(before);
        return new Exchange(cut, j, (int) times, extra / Math.min(gain, missing(k)));
    }

    private void carryOut(Exchange exchange) {
        Cut cut = exchange.from;
        ShoppingSection section = shopping.sections.get(cut.part);
        int before = cut.pattern.board();
        cut.times -= exchange.times;
        cuts.add(new Cut(cut.part, cut.pattern.on(exchange.board), cut.used, exchange.times));
        left[cut.part][before] += exchange.times;
        left[cut.part][exchange.board] -= exchange.times;
        if (section.supplier(before) != ShoppingCase.SHED) {
            value[section.supplier(before)] -= exchange.times * section.value(before);
        }
        value[section.supplier(exchange.board)] += exchange.times * section.value(exchange.board);
    }

    private Purchase purchase(Purchase from) {
        List<Packing> packings = new ArrayList<>();
        for (int s = 0; s < left.length; s++) {
            packings.add(new Packing());
        }
        for (Cut cut : cuts) {
            packings.get(cut.part).add(cut.pattern, cut.times);
        }
        return new Purchase(shopping, packings, Purchase.packsFor(shopping, packings), from.goods);
    }
}
