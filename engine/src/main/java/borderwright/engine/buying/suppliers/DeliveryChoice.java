package borderwright.engine.buying.suppliers;

import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.GoodsOffer;
import java.util.ArrayList;
import java.util.List;

/**
 * The delivery options of each supplier that may be of use. Options that another one dominates are dropped, and so are
 * thresholds that the goods on offer cannot reach.
 */
final class DeliveryChoice {
    private final ShoppingCase shopping;
    private final List<List<DeliveryOption>> ways = new ArrayList<>();

    DeliveryChoice(ShoppingCase shopping) {
        this.shopping = shopping;
        for (int k = 0; k < shopping.suppliers.size(); k++) {
            ways.add(useful(k));
        }
    }

    List<DeliveryOption> of(int k) {
        return ways.get(k);
    }

    /** Whether any order must reach a value for anything. */
    boolean hasThresholds() {
        return shopping.suppliers.stream().anyMatch(t -> t.minimumOrder() > 0)
                || ways.stream().flatMap(List::stream).anyMatch(w -> w.fromValue() > 0);
    }

    /** Whether boards of supplier {@code k} can be got home at all. */
    boolean carries(int k, BoardOffer offer) {
        return ways.get(k).stream().anyMatch(w -> w.carries(offer));
    }

    /** Whether goods of supplier {@code k} can be got home at all. */
    boolean carries(int k, GoodsOffer offer) {
        return ways.get(k).stream().anyMatch(w -> w.carries(offer));
    }

    private List<DeliveryOption> useful(int k) {
        List<DeliveryOption> useful = new ArrayList<>();
        double most = mostValue(k);
        for (DeliveryOption way : shopping.suppliers.get(k).ways()) {
            if (way.fromValue() > most || useful.stream().anyMatch(other -> isNoWorse(other, way, k))) {
                continue;
            }
            useful.removeIf(other -> isNoWorse(way, other, k));
            useful.add(way);
        }
        return useful;
    }

    /** What an order can come to, as priced; an estimate from above. */
    private double mostValue(int k) {
        String name = shopping.suppliers.get(k).name();
        double most = 0;
        for (BoardOffer b : shopping.problem.boards()) {
            if (b.supplier().equals(name) && b.packPrice() > 0) {
                double packs = (double) b.available() / b.pack();
                most += b.available() == Integer.MAX_VALUE ? Double.POSITIVE_INFINITY : b.packPrice() * packs;
            }
        }
        for (GoodsOffer g : shopping.problem.goods()) {
            if (g.supplier().equals(name) && g.price() > 0) {
                most += g.available() == Integer.MAX_VALUE
                        ? Double.POSITIVE_INFINITY
                        : (double) g.price() * g.available();
            }
        }
        return most * (1 + 1e-9);
    }

    /**
     * Whether one way carries all that another does, from no greater value, for no more. Rounding an order keeps this order:
     * it never falls with what is rounded, and a journey of one's own is in whole minor units.
     */
    private boolean isNoWorse(DeliveryOption way, DeliveryOption other, int k) {
        long least = shopping.suppliers.get(k).minimumOrder();
        return Math.max(least, way.fromValue()) <= Math.max(least, other.fromValue())
                && shopping.grains(way, k) <= shopping.grains(other, k)
                && carriesAllOf(way, other, k);
    }

    private boolean carriesAllOf(DeliveryOption way, DeliveryOption other, int k) {
        String name = shopping.suppliers.get(k).name();
        return shopping.problem.boards().stream()
                        .filter(b -> b.supplier().equals(name) && other.carries(b))
                        .allMatch(way::carries)
                && shopping.problem.goods().stream()
                        .filter(g -> g.supplier().equals(name) && other.carries(g))
                        .allMatch(way::carries);
    }
}
