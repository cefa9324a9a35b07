package borderwright.engine.buying;

import borderwright.engine.stock.Packing;
import java.util.List;

/**
 * One way to buy everything: how boards are cut, packs bought of each type and goods of each offer. Its cost is exact.
 */
final class Purchase {
    final List<Packing> packings;
    final int[][] packs;
    final int[][] goods;
    final long[] value;
    final long cost;

    /**
     * @param shopping the problem
     * @param packings one for each section
     * @param packs packs bought of each type of each section, at least what the packings need
     * @param goods count of each offer of each cover
     */
    Purchase(ShoppingCase shopping, List<Packing> packings, int[][] packs, int[][] goods) {
        this.packings = List.copyOf(packings);
        this.packs = packs;
        this.goods = goods;
        this.value = values(shopping, packs, goods);
        long sum = 0;
        for (int k = 0; k < value.length; k++) {
            sum = Math.addExact(sum, buysFrom(shopping, k) ? shopping.paid(k, value[k]) : 0);
        }
        this.cost = Math.addExact(sum, counted(shopping, packings, packs));
    }

    /** What boards of other sections count besides their prices, less what offcuts are worth. */
    private static long counted(ShoppingCase shopping, List<Packing> packings, int[][] packs) {
        long counted = shopping.firstCounted();
        for (int s = 0; s < packs.length; s++) {
            var stock = shopping.sections.get(s).stock;
            counted = Math.addExact(counted, packings.get(s).use(stock) / shopping.grain);
            for (int j = 0; j < packs[s].length; j++) {
                long kept =
                        shopping.sections.get(s).isBought(j) ? stock.pack(j) * stock.wholeWorth(j) / shopping.grain : 0;
                long each = shopping.sections.get(s).sources.get(j).counted() - kept;
                counted = Math.addExact(counted, Math.multiplyExact(packs[s][j], each));
            }
        }
        return counted;
    }

    /** Packs that the packings need and no more. */
    static int[][] packsFor(ShoppingCase shopping, List<Packing> packings) {
        int[][] packs = new int[packings.size()][];
        for (int s = 0; s < packs.length; s++) {
            var stock = shopping.sections.get(s).stock;
            packs[s] = packings.get(s).boards(stock);
            for (int j = 0; j < packs[s].length; j++) {
                packs[s][j] = (int) ((packs[s][j] + (long) stock.pack(j) - 1) / stock.pack(j));
            }
        }
        return packs;
    }

    private static long[] values(ShoppingCase shopping, int[][] packs, int[][] goods) {
        long[] value = shopping.firstValue.clone();
        for (int s = 0; s < packs.length; s++) {
            ShoppingCase.Section section = shopping.sections.get(s);
            for (int j = 0; j < packs[s].length; j++) {
                if (section.supplier[j] != ShoppingCase.SHED) {
                    value[section.supplier[j]] = Math.addExact(
                            value[section.supplier[j]], Math.multiplyExact(packs[s][j], section.value[j]));
                }
            }
        }
        for (int c = 0; c < goods.length; c++) {
            Cover cover = shopping.covers.get(c);
            for (int o = 0; o < goods[c].length; o++) {
                value[cover.supplier[o]] += goods[c][o] * cover.offers.get(o).price();
            }
        }
        return value;
    }

    /** Whether anything at all is bought from supplier {@code k}, even for nothing. */
    boolean buysFrom(ShoppingCase shopping, int k) {
        if (shopping.buysFirst(k)) {
            return true;
        }
        for (int s = 0; s < packs.length; s++) {
            for (int j = 0; j < packs[s].length; j++) {
                if (packs[s][j] > 0 && shopping.sections.get(s).supplier[j] == k) {
                    return true;
                }
            }
        }
        for (int c = 0; c < goods.length; c++) {
            for (int o = 0; o < goods[c].length; o++) {
                if (goods[c][o] > 0 && shopping.covers.get(c).supplier[o] == k) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Boards bought: among equal costs fewer are lifted. */
    long boards(ShoppingCase shopping) {
        long boards = 0;
        for (int s = 0; s < packs.length; s++) {
            for (int j = 0; j < packs[s].length; j++) {
                boards += (long) packs[s][j] * shopping.sections.get(s).stock.pack(j);
            }
        }
        return boards;
    }

    /** Whether every supplier's smallest order is reached. */
    boolean meetsMinimums(ShoppingCase shopping) {
        for (int k = 0; k < value.length; k++) {
            if (value[k] < shopping.suppliers.get(k).minimumOrder() && buysFrom(shopping, k)) {
                return false;
            }
        }
        return true;
    }
}
