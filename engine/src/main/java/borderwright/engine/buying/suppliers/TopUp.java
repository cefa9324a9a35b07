package borderwright.engine.buying.suppliers;

import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lifts orders to a smallest order or to free delivery by buying a little more, where that costs less. What is bought
 * on top is whole boards or goods of the same list; the least sum that reaches the threshold is found by an exact table.
 */
final class TopUp {
    /** Greatest gap, in minor units, that the table covers; beyond it nothing is added. */
    private static final int MOST_GAP = 200_000;

    private final ShoppingCase shopping;

    TopUp(ShoppingCase shopping) {
        this.shopping = shopping;
    }

    /** The purchase itself, or a cheaper or newly allowed one with more bought from supplier {@code k}. */
    Purchase better(Purchase purchase) {
        Purchase best = purchase;
        for (int k = 0; k < purchase.value.length; k++) {
            SupplierTerms terms = shopping.suppliers.get(k);
            if (!best.buysFrom(k)) {
                continue;
            }
            if (best.value[k] < terms.minimumOrder()) {
                best = lifted(best, k, terms.minimumOrder());
            }
            for (DeliveryOption way : shopping.delivery.of(k)) {
                best = way.fromValue() > best.value[k] ? cheaper(best, k, way) : best;
            }
        }
        return best;
    }

    private Purchase cheaper(Purchase from, int k, DeliveryOption way) {
        DeliveryOption now = from.way(k);
        // What is added costs its price, so it must be less than the charge that it saves.
        if (now != null
                && shopping.paid(k, way.fromValue(), way) >= shopping.paid(k, from.value[k], now)
                && from.canBeHad(shopping)) {
            return from;
        }
        Purchase lifted = lifted(from, k, way.fromValue());
        boolean isBetter = lifted.cost < from.cost || !from.canBeHad(shopping);
        return isBetter && lifted.canBeHad(shopping) ? lifted : from;
    }

    private Purchase lifted(Purchase from, int k, long threshold) {
        long gap = threshold - from.value[k];
        List<int[]> extras = extras(from, k);
        if (gap <= 0 || gap > MOST_GAP || extras.isEmpty()) {
            return from;
        }
        int[] chosen = leastSum(extras, (int) gap);
        if (chosen.length == 0) {
            return from;
        }
        int[][] packs = copy(from.packs);
        int[][] goods = copy(from.goods);
        for (int e : chosen) {
            int[] extra = extras.get(e);
            (extra[0] == 0 ? packs : goods)[extra[1]][extra[2]]++;
        }
        return new Purchase(shopping, from.packings, packs, goods);
    }

    /** What may be added: kind (0 board, 1 goods), index, index within, price, how many more there are. */
    private List<int[]> extras(Purchase from, int k) {
        List<int[]> extras = new ArrayList<>();
        for (int s = 0; s < from.packs.length; s++) {
            ShoppingSection section = shopping.sections.get(s);
            for (int j = 0; j < from.packs[s].length; j++) {
                int more = section.stock.available(j) / section.stock.pack(j) - from.packs[s][j];
                boolean sold = from.packs[s][j] > 0 || section.stock.least(j) == 1;
                if (section.supplier(j) == k
                        && sold
                        && more > 0
                        && section.value(j) > 0
                        && section.value(j) <= MOST_GAP) {
                    extras.add(new int[] {0, s, j, (int) section.value(j), more});
                }
            }
        }
        for (int c = 0; c < from.goods.length; c++) {
            GoodsCover cover = shopping.covers.get(c);
            for (int o = 0; o < from.goods[c].length; o++) {
                long price = cover.offers.get(o).terms().price();
                int more = cover.offers.get(o).terms().available() - from.goods[c][o];
                boolean sold =
                        from.goods[c][o] > 0 || !cover.offers.get(o).terms().hasBreak();
                if (cover.offers.get(o).supplier() == k && sold && more > 0 && price > 0 && price <= MOST_GAP) {
                    extras.add(new int[] {1, c, o, (int) price, more});
                }
            }
        }
        return extras;
    }

    /** Extras, by index and with repeats, whose prices add up to the least sum of at least {@code gap}. */
    private static int[] leastSum(List<int[]> extras, int gap) {
        int dearest = extras.stream().mapToInt(e -> e[3]).max().orElse(0);
        int[] last = new int[gap + dearest + 1];
        Arrays.fill(last, -1);
        last[0] = extras.size();
        for (int e = 0; e < extras.size(); e++) {
            int price = extras.get(e)[3];
            int[] used = new int[last.length];
            for (int sum = price; sum < last.length; sum++) {
                if (last[sum] < 0 && last[sum - price] >= 0 && used[sum - price] < extras.get(e)[4]) {
                    last[sum] = e;
                    used[sum] = used[sum - price] + 1;
                }
            }
        }
        for (int sum = gap; sum < last.length; sum++) {
            if (last[sum] >= 0) {
                return trace(last, extras, sum);
            }
        }
        return new int[0];
    }

    private static int[] trace(int[] last, List<int[]> extras, int sum) {
        List<Integer> chosen = new ArrayList<>();
        for (int at = sum; at > 0; at -= extras.get(last[at])[3]) {
            chosen.add(last[at]);
        }
        return chosen.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int[][] copy(int[][] from) {
        int[][] to = new int[from.length][];
        for (int i = 0; i < to.length; i++) {
            to[i] = from[i].clone();
        }
        return to;
    }
}
