package borderwright.engine.buying.suppliers;

import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.stock.Packing;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One way to buy everything: how boards are cut, packs bought of each type and goods of each offer. Its cost is exact.
 */
public final class Purchase {
    final List<Packing> packings;
    final int[][] packs;
    final int[][] goods;
    final long[] value;
    public final long cost;
    /** How each order gets home at the least cost; null where nothing is bought, or no way carries it. */
    private final @Nullable DeliveryOption[] ways;

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
        this.ways = new @Nullable DeliveryOption[value.length];
        long sum = 0;
        for (int k = 0; k < value.length; k++) {
            if (buysFrom(shopping, k)) {
                ways[k] = cheapestWay(shopping, k);
                sum = Math.addExact(sum, shopping.paid(k, value[k], ways[k]));
            }
        }
        this.cost = Math.addExact(sum, counted(shopping, packings, packs));
    }

    /** How the boards of a section are cut. */
    public Packing packing(int s) {
        return packings.get(s);
    }

    private @Nullable DeliveryOption cheapestWay(ShoppingCase shopping, int k) {
        DeliveryOption best = null;
        for (DeliveryOption way : shopping.delivery.of(k)) {
            if (value[k] >= way.fromValue()
                    && isCarried(shopping, k, way)
                    && (best == null || shopping.paid(k, value[k], way) < shopping.paid(k, value[k], best))) {
                best = way;
            }
        }
        return best;
    }

    private boolean isCarried(ShoppingCase shopping, int k, DeliveryOption way) {
        for (int s = 0; s < packs.length; s++) {
            ShoppingSection section = shopping.sections.get(s);
            for (int j = 0; j < packs[s].length; j++) {
                if (packs[s][j] > 0
                        && section.supplier(j) == k
                        && !section.source(j).isCarriedBy(way)) {
                    return false;
                }
            }
        }
        for (int c = 0; c < goods.length; c++) {
            GoodsCover cover = shopping.covers.get(c);
            for (int o = 0; o < goods[c].length; o++) {
                if (goods[c][o] > 0 && cover.supplier[o] == k && !way.carries(cover.offers.get(o))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How the order to supplier {@code k} gets home; null where nothing is bought, or no way carries it. */
    @Nullable
    DeliveryOption way(int k) {
        return ways[k];
    }

    /** What boards of other sections count besides their prices, less what offcuts are worth. */
    private static long counted(ShoppingCase shopping, List<Packing> packings, int[][] packs) {
        long counted = 0;
        for (int s = 0; s < packs.length; s++) {
            var stock = shopping.sections.get(s).stock;
            counted = Math.addExact(counted, packings.get(s).use(stock) / shopping.grain);
            for (int j = 0; j < packs[s].length; j++) {
                long kept =
                        shopping.sections.get(s).isBought(j) ? stock.pack(j) * stock.wholeWorth(j) / shopping.grain : 0;
                long each = shopping.sections.get(s).source(j).counted() - kept;
                counted = Math.addExact(counted, Math.multiplyExact(packs[s][j], each));
            }
        }
        return counted;
    }

    /** Packs that the packings need and no more than are sold at least. */
    static int[][] packsFor(ShoppingCase shopping, List<Packing> packings) {
        int[][] packs = new int[packings.size()][];
        for (int s = 0; s < packs.length; s++) {
            var stock = shopping.sections.get(s).stock;
            packs[s] = packings.get(s).boards(stock);
            for (int j = 0; j < packs[s].length; j++) {
                packs[s][j] = (int) stock.packsFor(j, packs[s][j]);
            }
        }
        return packs;
    }

    private static long[] values(ShoppingCase shopping, int[][] packs, int[][] goods) {
        long[] value = new long[shopping.suppliers.size()];
        for (int s = 0; s < packs.length; s++) {
            ShoppingSection section = shopping.sections.get(s);
            for (int j = 0; j < packs[s].length; j++) {
                if (section.supplier(j) != ShoppingCase.SHED) {
                    value[section.supplier(j)] = Math.addExact(
                            value[section.supplier(j)], Math.multiplyExact(packs[s][j], section.value(j)));
                }
            }
        }
        for (int c = 0; c < goods.length; c++) {
            GoodsCover cover = shopping.covers.get(c);
            for (int o = 0; o < goods[c].length; o++) {
                value[cover.supplier[o]] += goods[c][o] * cover.offers.get(o).price();
            }
        }
        return value;
    }

    /** Whether anything at all is bought from supplier {@code k}, even for nothing. */
    boolean buysFrom(ShoppingCase shopping, int k) {
        for (int s = 0; s < packs.length; s++) {
            for (int j = 0; j < packs[s].length; j++) {
                if (packs[s][j] > 0 && shopping.sections.get(s).supplier(j) == k) {
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

    /** Whether its pieces can be cut as its packings have them. */
    boolean canBeCut(ShoppingCase shopping) {
        return IntStream.range(0, packings.size())
                .allMatch(s -> shopping.sections.get(s).stock.admits(packing(s)));
    }

    /** Whether every supplier's smallest order is reached, and every order gets home. */
    boolean canBeHad(ShoppingCase shopping) {
        for (int k = 0; k < value.length; k++) {
            boolean isHad =
                    ways[k] != null && value[k] >= shopping.suppliers.get(k).minimumOrder();
            if (!isHad && buysFrom(shopping, k)) {
                return false;
            }
        }
        return true;
    }
}
