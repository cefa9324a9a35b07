package borderwright.engine.buying.suppliers;

import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.stock.Packing;
import java.util.ArrayList;
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
    final List<BoughtBoards> boards;
    final List<BoughtGoods> items;
    final long[] value;
    public final long cost;
    /** How each order gets home at the least cost; null where nothing is bought, or no way carries it. */
    private final @Nullable DeliveryOption[] ways;

    /**
     * Packs of one type of board.
     *
     * @param section whose board it is
     * @param type number of the type in its section
     * @param packs at least 1
     */
    record BoughtBoards(ShoppingSection section, int type, int packs) {
        int supplier() {
            return section.supplier(type);
        }

        boolean isCarriedBy(DeliveryOption way) {
            return section.source(type).isCarriedBy(way);
        }
    }

    /**
     * Some of one offer of goods.
     *
     * @param offer what is bought
     * @param count at least 1
     */
    record BoughtGoods(GoodsCover.Offer offer, int count) {}

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
        this.boards = boards(shopping, packs);
        this.items = items(shopping, goods);
        this.value = values(shopping);
        this.ways = new @Nullable DeliveryOption[value.length];
        long sum = 0;
        for (int k = 0; k < value.length; k++) {
            if (buysFrom(k)) {
                ways[k] = cheapestWay(shopping, k);
                sum = Math.addExact(sum, shopping.paid(k, value[k], ways[k]));
            }
        }
        this.cost = Math.addExact(sum, counted(shopping));
    }

    /** How the boards of a section are cut. */
    public Packing packing(int s) {
        return packings.get(s);
    }

    private @Nullable DeliveryOption cheapestWay(ShoppingCase shopping, int k) {
        DeliveryOption best = null;
        for (DeliveryOption way : shopping.delivery.of(k)) {
            if (value[k] >= way.fromValue()
                    && isCarried(k, way)
                    && (best == null || shopping.paid(k, value[k], way) < shopping.paid(k, value[k], best))) {
                best = way;
            }
        }
        return best;
    }

    private boolean isCarried(int k, DeliveryOption way) {
        return boards.stream().allMatch(bought -> bought.supplier() != k || bought.isCarriedBy(way))
                && items.stream().allMatch(bought -> bought.offer.supplier() != k || way.carries(bought.offer.terms()));
    }

    /** How the order to supplier {@code k} gets home; null where nothing is bought, or no way carries it. */
    @Nullable
    DeliveryOption way(int k) {
        return ways[k];
    }

    /** What boards of other sections count besides their prices, less what offcuts are worth. */
    private long counted(ShoppingCase shopping) {
        long counted = 0;
        for (int s = 0; s < packings.size(); s++) {
            counted = Math.addExact(counted, packings.get(s).use(shopping.sections.get(s).stock) / shopping.grain);
        }
        for (BoughtBoards bought : boards) {
            ShoppingSection section = bought.section;
            var stock = section.stock;
            int j = bought.type;
            long kept = section.isBought(j) ? stock.pack(j) * stock.wholeWorth(j) / shopping.grain : 0;
            long each = section.source(j).counted() - kept;
            counted = Math.addExact(counted, Math.multiplyExact(bought.packs, each));
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

    private static List<BoughtBoards> boards(ShoppingCase shopping, int[][] packs) {
        List<BoughtBoards> bought = new ArrayList<>();
        for (int s = 0; s < packs.length; s++) {
            for (int j = 0; j < packs[s].length; j++) {
                if (packs[s][j] > 0) {
                    bought.add(new BoughtBoards(shopping.sections.get(s), j, packs[s][j]));
                }
            }
        }
        return bought;
    }

    private static List<BoughtGoods> items(ShoppingCase shopping, int[][] goods) {
        List<BoughtGoods> bought = new ArrayList<>();
        for (int c = 0; c < goods.length; c++) {
            for (int o = 0; o < goods[c].length; o++) {
                if (goods[c][o] > 0) {
                    bought.add(new BoughtGoods(shopping.covers.get(c).offers.get(o), goods[c][o]));
                }
            }
        }
        return bought;
    }

    private long[] values(ShoppingCase shopping) {
        long[] sums = new long[shopping.suppliers.size()];
        for (BoughtBoards bought : boards) {
            int k = bought.supplier();
            if (k != ShoppingCase.SHED) {
                sums[k] = Math.addExact(sums[k], Math.multiplyExact(bought.packs, bought.section.value(bought.type)));
            }
        }
        for (BoughtGoods bought : items) {
            sums[bought.offer.supplier()] += bought.count * bought.offer.terms().price();
        }
        return sums;
    }

    /** Whether anything at all is bought from supplier {@code k}, even for nothing. */
    boolean buysFrom(int k) {
        return boards.stream().anyMatch(bought -> bought.supplier() == k)
                || items.stream().anyMatch(bought -> bought.offer.supplier() == k);
    }

    /** Boards bought: among equal costs fewer are lifted. */
    long countOfBoards() {
        return boards.stream()
                .mapToLong(bought -> (long) bought.packs * bought.section.stock.pack(bought.type))
                .sum();
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
            if (!isHad && buysFrom(k)) {
                return false;
            }
        }
        return true;
    }
}
