package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.boards.BoardModel;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One answer to the question which suppliers are bought from, and how each order gets home. Within a case the charges are
 * fixed, and so is what may be bought.
 */
final class SupplierCase {
    /** How each supplier's order gets home; null where nothing is bought from it. */
    private final @Nullable DeliveryOption[] ways;

    private final boolean loose;
    private final ShoppingCase shopping;
    /** No basket of this case costs less, minor units. */
    long bound;

    /** Cost of the best basket found for this case, minor units. */
    long cost = Long.MAX_VALUE;

    int stage;

    private SupplierCase(ShoppingCase shopping, @Nullable DeliveryOption[] ways, boolean loose) {
        this.shopping = shopping;
        this.ways = ways.clone();
        this.loose = loose;
    }

    /** With very many suppliers: all of them, as if no journey cost anything and no order had a mark; true as a bound. */
    static SupplierCase loosest(ShoppingCase shopping) {
        @Nullable DeliveryOption[] ways = new @Nullable DeliveryOption[shopping.suppliers.size()];
        for (int k = 0; k < ways.length; k++) {
            ways[k] = DeliveryOption.delivered(0, 0);
        }
        return new SupplierCase(shopping, ways, true);
    }

    /** Every case of a problem; empty when there are more than {@code most}. */
    static List<SupplierCase> all(ShoppingCase shopping, int most) {
        List<@Nullable DeliveryOption[]> cases = new ArrayList<>();
        cases.add(new @Nullable DeliveryOption[shopping.suppliers.size()]);
        for (int k = 0; k < shopping.suppliers.size(); k++) {
            List<@Nullable DeliveryOption[]> more = new ArrayList<>();
            for (@Nullable DeliveryOption[] each : cases) {
                more.add(each);
                for (DeliveryOption way : shopping.ways.of(k)) {
                    @Nullable DeliveryOption[] next = each.clone();
                    next[k] = way;
                    more.add(next);
                }
            }
            cases = more;
            if (cases.size() > most) {
                return List.of(loosest(shopping));
            }
        }
        return cases.stream().map(w -> new SupplierCase(shopping, w, false)).toList();
    }

    private boolean uses(int k) {
        return ways[k] != null;
    }

    /** Whether boards of a type of a section may be used. */
    boolean allows(ShoppingCase.Section section, int j) {
        int k = section.supplier[j];
        DeliveryOption way = k == ShoppingCase.SHED ? null : ways[k];
        return k == ShoppingCase.SHED || (way != null && section.sources.get(j).isCarriedBy(way));
    }

    private boolean allows(GoodsCover cover, int o) {
        DeliveryOption way = ways[cover.supplier[o]];
        return way != null && way.carries(cover.offers.get(o));
    }

    /** Least value of goods from a supplier that the case demands, as priced. */
    long leastValue(int k) {
        DeliveryOption way = ways[k];
        return way == null || loose ? 0 : Math.max(shopping.suppliers.get(k).minimumOrder(), way.fromValue());
    }

    /** Boards and goods cost at least what the orders must come to, grains. */
    long leastGrains() {
        long grains = 0;
        for (int k = 0; k < ways.length; k++) {
            grains = Math.addExact(grains, shopping.grains(leastValue(k), k));
        }
        return grains;
    }

    /** Whether orders of such values, as priced, reach what the case demands. */
    boolean isMetBy(long[] value) {
        for (int k = 0; k < value.length; k++) {
            if (value[k] < leastValue(k)) {
                return false;
            }
        }
        return true;
    }

    /** The only supplier that the case uses, -1 when there are none or several. */
    int onlySupplier() {
        int only = -1;
        for (int k = 0; k < ways.length; k++) {
            if (uses(k)) {
                if (only >= 0) {
                    return -1;
                }
                only = k;
            }
        }
        return only;
    }

    boolean isCoupled() {
        for (int k = 0; k < ways.length; k++) {
            if (leastValue(k) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Charges of the case, grains. */
    long deliveryGrains() {
        long grains = 0;
        for (int k = 0; k < ways.length; k++) {
            DeliveryOption way = ways[k];
            grains += way == null ? 0 : shopping.grains(way, k);
        }
        return grains;
    }

    /** How many grains rounding may take off all orders together. */
    long roundingGrains() {
        long grains = 0;
        for (int k = 0; k < ways.length; k++) {
            grains += uses(k) && shopping.roundsTax(k) ? (shopping.grain - 1) / 2 : 0;
        }
        return grains;
    }

    /** A true bound in minor units from a bound on boards and goods in grains. */
    long wholeBound(long grains) {
        if (grains == Long.MAX_VALUE) {
            return Long.MAX_VALUE;
        }
        long least = grains + deliveryGrains() - roundingGrains();
        return Math.max(0, Math.floorDiv(least + shopping.grain - 1, shopping.grain));
    }

    /** Greatest grains of boards and goods with which a basket can cost less than {@code cost} minor units. */
    long targetGrains(long cost) {
        return (cost - 1) * shopping.grain + roundingGrains() - deliveryGrains();
    }

    /** More than any basket of the case costs that holds nothing without a reason, boards and goods in grains. */
    long sensibleGrains() {
        double sum = 0;
        for (ShoppingCase.Section section : shopping.sections) {
            for (int j = 0; j < section.supplier.length; j++) {
                double packs = Math.min(
                        section.stock.available(j), Math.max(section.stock.pieces() + 1, section.stock.least(j)));
                sum += allows(section, j) ? packs * section.stock.cost(j) : 0;
            }
        }
        for (GoodsCover cover : shopping.covers) {
            for (int o = 0; o < cover.offers.size(); o++) {
                double most = Math.max(
                        cover.wanted / (double) cover.content[o] + 1,
                        cover.offers.get(o).least());
                sum += most * shopping.grains(cover.offers.get(o).price(), cover.supplier[o]);
            }
        }
        for (int k = 0; k < ways.length; k++) {
            sum += 2.0 * shopping.grains(leastValue(k), k);
        }
        return (long) Math.min(2 * sum + 1, Math.scalb(1.0, 55));
    }

    /** The section's boards that the case allows. */
    StockCase restricted(ShoppingCase.Section section) {
        int[] available = section.stock.copyOfAvailable();
        for (int j = 0; j < available.length; j++) {
            if (!allows(section, j)) {
                available[j] = 0;
            }
        }
        return section.stock.withAvailable(available);
    }

    /** The cheapest goods for a need in this case, or none that meet it where it cannot be met. */
    GoodsCover.Choice cheapestGoods(GoodsCover cover) {
        long[] costs = new long[cover.offers.size()];
        boolean[] allowed = new boolean[costs.length];
        for (int o = 0; o < costs.length; o++) {
            costs[o] = shopping.grains(cover.offers.get(o).price(), cover.supplier[o]);
            allowed[o] = allows(cover, o);
        }
        return cover.cheapest(costs, allowed);
    }

    /** The whole case as one model: sections, goods, and the least value of each order. */
    BoardModel model() {
        List<Long> need = new ArrayList<>();
        List<BoardModel.Extra> extras = new ArrayList<>();
        for (GoodsCover cover : shopping.covers) {
            need.add(cover.wanted);
        }
        int[] valueRow = new int[ways.length];
        for (int k = 0; k < ways.length; k++) {
            valueRow[k] = leastValue(k) > 0 ? need.size() : -1;
            if (valueRow[k] >= 0) {
                need.add(leastValue(k));
            }
        }
        for (int c = 0; c < shopping.covers.size(); c++) {
            GoodsCover cover = shopping.covers.get(c);
            for (int o = 0; o < cover.offers.size(); o++) {
                extras.add(extra(cover, c, o, valueRow));
            }
        }
        int n = shopping.sections.size();
        List<StockCase> parts = new ArrayList<>();
        int[][] sideRow = new int[n][];
        long[][] sideValue = new long[n][];
        for (int s = 0; s < n; s++) {
            ShoppingCase.Section section = shopping.sections.get(s);
            parts.add(restricted(section));
            sideRow[s] = new int[section.supplier.length];
            sideValue[s] = section.value;
            Arrays.setAll(
                    sideRow[s], j -> section.supplier[j] == ShoppingCase.SHED ? -1 : valueRow[section.supplier[j]]);
        }
        return new BoardModel(
                parts, need.stream().mapToLong(Long::longValue).toArray(), sideRow, sideValue, extras, List.of());
    }

    private BoardModel.Extra extra(GoodsCover cover, int c, int o, int[] valueRow) {
        GoodsOffer offer = cover.offers.get(o);
        int k = cover.supplier[o];
        int side = valueRow[k];
        long most = (cover.wanted + cover.content[o] - 1) / cover.content[o];
        if (side >= 0 && offer.price() > 0) {
            most += (leastValue(k) + offer.price() - 1) / offer.price();
        }
        return new BoardModel.Extra(
                shopping.grains(offer.price(), k),
                side < 0 ? new int[] {c} : new int[] {c, side},
                side < 0 ? new long[] {cover.content[o]} : new long[] {cover.content[o], offer.price()},
                allows(cover, o) ? (int) Math.min(Math.max(most, offer.least()), offer.available()) : 0,
                offer.least());
    }
}
