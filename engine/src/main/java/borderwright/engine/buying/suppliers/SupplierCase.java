package borderwright.engine.buying.suppliers;

import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
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
    private long bound;
    private long cost = Long.MAX_VALUE;
    private Stage stage = Stage.OPEN;

    /** How far a case was looked into. */
    enum Stage {
        /** Only a simple bound is known. */
        OPEN,
        /** Heuristics have run. */
        TRIED,
        /** The linear programme of each section is solved. */
        PRICED,
        /** The linear programme of all sections together is solved. */
        COUPLED,
        /** It was searched. */
        SEARCHED
    }

    private SupplierCase(ShoppingCase shopping, @Nullable DeliveryOption[] ways, boolean loose) {
        this.shopping = shopping;
        this.ways = ways.clone();
        this.loose = loose;
    }

    /** With very many suppliers: all of them, as if no journey cost anything and no order had a threshold; true as a bound. */
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
                for (DeliveryOption way : shopping.delivery.of(k)) {
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

    /** No basket of this case costs less, minor units; {@link Long#MAX_VALUE} when there is none. */
    long bound() {
        return bound;
    }

    /** Takes a bound that may be higher than the one that is known, minor units. */
    void raiseBound(long other) {
        bound = Math.max(bound, other);
    }

    /** Cost of the best basket found for this case, minor units; {@link Long#MAX_VALUE} while none is. */
    long cost() {
        return cost;
    }

    /** Takes the cost of a basket of this case, minor units. */
    void lowerCost(long other) {
        cost = Math.min(cost, other);
    }

    /** Whether the case was looked into as far as a stage. */
    boolean hasReached(Stage other) {
        return stage.compareTo(other) >= 0;
    }

    /** Notes that the case was looked into as far as a stage. */
    void reach(Stage other) {
        stage = other;
    }

    private boolean uses(int k) {
        return ways[k] != null;
    }

    /** Whether boards of a type of a section may be used. */
    boolean allows(ShoppingSection section, int j) {
        int k = section.supplier(j);
        DeliveryOption way = k == ShoppingCase.SHED ? null : ways[k];
        return k == ShoppingCase.SHED || (way != null && section.source(j).isCarriedBy(way));
    }

    /** Whether goods of an offer may be bought. */
    boolean allows(GoodsCover cover, int o) {
        DeliveryOption way = ways[cover.offers.get(o).supplier()];
        return way != null && way.carries(cover.offers.get(o).terms());
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
        for (ShoppingSection section : shopping.sections) {
            for (int j = 0; j < section.types(); j++) {
                double packs = Math.min(
                        section.stock.available(j), Math.max(section.stock.pieces() + 1, section.stock.least(j)));
                sum += allows(section, j) ? packs * section.stock.cost(j) : 0;
            }
        }
        for (GoodsCover cover : shopping.covers) {
            for (int o = 0; o < cover.offers.size(); o++) {
                double most = Math.max(
                        cover.wanted / (double) cover.offers.get(o).content() + 1,
                        cover.offers.get(o).terms().least());
                sum += most
                        * shopping.grains(
                                cover.offers.get(o).terms().price(),
                                cover.offers.get(o).supplier());
            }
        }
        for (int k = 0; k < ways.length; k++) {
            sum += 2.0 * shopping.grains(leastValue(k), k);
        }
        return (long) Math.min(2 * sum + 1, Math.scalb(1.0, 55));
    }

    /** The section's boards that the case allows. */
    StockCase restricted(ShoppingSection section) {
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
            costs[o] = shopping.grains(
                    cover.offers.get(o).terms().price(), cover.offers.get(o).supplier());
            allowed[o] = allows(cover, o);
        }
        return cover.cheapest(costs, allowed);
    }
}
