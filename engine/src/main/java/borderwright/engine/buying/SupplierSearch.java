package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import borderwright.engine.stock.GreedyFill;
import borderwright.engine.stock.MaterialBound;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Tries which suppliers to buy from, each set of them with its own packings, bound and delivery. */
final class SupplierSearch {
    /** Sets of suppliers looked at one by one up to this many suppliers: 2^10 sets. */
    private static final int MOST_SUPPLIERS = 10;

    private final ShoppingCase shopping;
    private final Budget budget;
    private final Progress progress;
    private final TopUp topUp;
    private @Nullable Purchase best;
    private long bound;

    SupplierSearch(ShoppingCase shopping, Budget budget, Progress progress) {
        this.shopping = shopping;
        this.budget = budget;
        this.progress = progress;
        this.topUp = new TopUp(shopping);
    }

    /** The best purchase found; null when none was. */
    @Nullable
    Purchase best() {
        return best;
    }

    /** No purchase costs less, minor units; {@link Long#MAX_VALUE} when there can be none. */
    long bound() {
        return bound;
    }

    SupplierSearch run() {
        int suppliers = shopping.suppliers.size();
        long all = (1L << Math.min(suppliers, 62)) - 1;
        bound = Long.MAX_VALUE;
        if (suppliers > MOST_SUPPLIERS) {
            bound = boundOf(all, false);
            visit(all);
            for (int k = 0; k < suppliers && !budget.isSpent(); k++) {
                visit(1L << k);
            }
        } else {
            for (long set = all; set >= 0; set--) {
                bound = Math.min(bound, boundOf(set, true));
                if (best == null || !budget.isSpent()) {
                    visit(set);
                }
            }
        }
        return this;
    }

    private void visit(long set) {
        List<Packing> packings = new ArrayList<>();
        for (ShoppingCase.Section section : shopping.sections) {
            StockCase stock = restricted(section, set);
            budget.spend((long) stock.sizes() * stock.boards());
            Packing packing = GreedyFill.pack(stock);
            if (packing == null) {
                return;
            }
            packings.add(packing);
        }
        int[][] goods = new int[shopping.covers.size()][];
        for (int c = 0; c < goods.length; c++) {
            goods[c] = cheapestGoods(shopping.covers.get(c), set);
            if (goods[c].length == 0) {
                return;
            }
        }
        offer(new Purchase(shopping, packings, Purchase.packsFor(shopping, packings), goods));
    }

    private void offer(Purchase found) {
        Purchase better = topUp.better(found);
        if (better.meetsMinimums(shopping) && (best == null || better.cost < best.cost)) {
            best = better;
            progress.better(better.cost, 0);
        }
    }

    private int[] cheapestGoods(Cover cover, long set) {
        long[] costs = new long[cover.offers.size()];
        boolean[] allowed = new boolean[costs.length];
        for (int o = 0; o < costs.length; o++) {
            costs[o] = shopping.grains(cover.offers.get(o).price(), cover.supplier[o]);
            allowed[o] = (set >> cover.supplier[o] & 1) != 0;
        }
        return cover.cheapest(costs, allowed);
    }

    private static StockCase restricted(ShoppingCase.Section section, long set) {
        int[] available = section.stock.copyOfAvailable();
        for (int j = 0; j < available.length; j++) {
            if (section.supplier[j] != ShoppingCase.SHED && (set >> section.supplier[j] & 1) == 0) {
                available[j] = 0;
            }
        }
        return section.stock.withAvailable(available);
    }

    /** No purchase from exactly these suppliers costs less, minor units. */
    private long boundOf(long set, boolean withDelivery) {
        long grains = 0;
        long slack = 0;
        for (ShoppingCase.Section section : shopping.sections) {
            long part = MaterialBound.of(restricted(section, set));
            if (part == Long.MAX_VALUE) {
                return Long.MAX_VALUE;
            }
            grains = Math.addExact(grains, part);
        }
        for (Cover cover : shopping.covers) {
            int[] counts = cheapestGoods(cover, set);
            if (counts.length == 0) {
                return Long.MAX_VALUE;
            }
            for (int o = 0; o < counts.length; o++) {
                grains += counts[o] * shopping.grains(cover.offers.get(o).price(), cover.supplier[o]);
            }
        }
        for (int k = 0; k < shopping.suppliers.size(); k++) {
            if ((set >> k & 1) != 0) {
                SupplierTerms terms = shopping.suppliers.get(k);
                slack += shopping.roundsTax(k) ? shopping.grain / 2 : 0;
                grains += withDelivery && terms.freeOver() == SupplierTerms.NEVER
                        ? shopping.grains(terms.delivery(), k)
                        : 0;
            }
        }
        return Math.max(0, Math.floorDiv(grains - slack + shopping.grain - 1, shopping.grain));
    }
}
