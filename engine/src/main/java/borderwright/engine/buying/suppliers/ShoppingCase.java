package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.Packing;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A shopping problem in whole numbers: one stock case for each section, one small cover for each other need.
 *
 * <p>Costs are in grains: minor units times {@link #grain}, the least factor that makes every tax whole. Suppliers are
 * numbered in the order in which boards and goods first name them; {@link #SHED} is what is owned.
 */
public final class ShoppingCase {
    /** Supplier number of boards that are owned. */
    static final int SHED = -1;

    public final ShoppingProblem problem;
    public final List<SupplierTerms> suppliers = new ArrayList<>();
    final long grain;
    public final List<ShoppingSection> sections = new ArrayList<>();
    final List<GoodsCover> covers = new ArrayList<>();
    public final List<GoodsNeed> unpriced = new ArrayList<>();
    /** Ways of getting an order home that may be of use. */
    final DeliveryChoice delivery;

    private final Map<String, Integer> number;
    private final long[] taxFactor;

    public ShoppingCase(ShoppingProblem problem) {
        this.problem = problem;
        this.number = numberSuppliers();
        BigInteger bottom = BigInteger.ONE;
        for (SupplierTerms terms : suppliers) {
            bottom = bottom.multiply(terms.taxBottom()).divide(bottom.gcd(terms.taxBottom()));
        }
        this.grain = bottom.longValueExact();
        this.taxFactor = new long[suppliers.size()];
        for (int k = 0; k < taxFactor.length; k++) {
            SupplierTerms terms = suppliers.get(k);
            taxFactor[k] =
                    terms.taxTop().multiply(bottom).divide(terms.taxBottom()).longValueExact();
        }
        this.delivery = new DeliveryChoice(this);
        Map<String, List<Demand>> bySection = new LinkedHashMap<>();
        for (Demand demand : problem.demands()) {
            bySection.computeIfAbsent(demand.section(), s -> new ArrayList<>()).add(demand);
        }
        if (delivery.hasThresholds()) {
            // Boards that nothing is cut from may still bring an order to its threshold.
            problem.boards().forEach(b -> bySection.computeIfAbsent(b.section(), s -> new ArrayList<>()));
        }
        bySection.forEach((name, demands) -> sections.add(new ShoppingSection(this, name, demands)));
        for (GoodsNeed need : problem.needs()) {
            addCover(need);
        }
    }

    private Map<String, Integer> numberSuppliers() {
        Map<String, SupplierTerms> terms = new HashMap<>();
        problem.terms().forEach(t -> terms.put(t.name(), t));
        Map<String, Integer> numbers = new HashMap<>();
        List<String> names = new ArrayList<>();
        problem.boards().forEach(b -> names.add(b.supplier()));
        problem.goods().forEach(g -> names.add(g.supplier()));
        for (String name : names) {
            if (!numbers.containsKey(name)) {
                numbers.put(name, suppliers.size());
                suppliers.add(terms.getOrDefault(name, SupplierTerms.none(name)));
            }
        }
        return numbers;
    }

    /** Number of a supplier by its name; {@link #SHED} where nothing is bought from it. */
    public int number(String supplier) {
        return number.getOrDefault(supplier, SHED);
    }

    private void addCover(GoodsNeed need) {
        List<GoodsOffer> offers = new ArrayList<>();
        for (GoodsOffer offer : problem.goods()) {
            if (offer.item().equals(need.item())
                    && offer.available() >= offer.least()
                    && delivery.carries(number(offer.supplier()), offer)) {
                offers.add(offer);
            }
        }
        GoodsCover cover = new GoodsCover(
                need,
                offers,
                offers.stream().mapToInt(o -> number(o.supplier())).toArray());
        if (cover.canBeMet()) {
            covers.add(cover);
        } else {
            unpriced.add(need);
        }
    }

    /**
     * An answer to another list of the same pieces as packings, one for each section; empty where it is none to this list.
     */
    public Optional<List<Packing>> packings(ShoppingAnswer known) {
        List<Packing> packings = new ArrayList<>();
        for (ShoppingSection section : sections) {
            Packing packing = section.packing(known.boards().stream()
                    .filter(b -> b.section().equals(section.name))
                    .toList());
            if (packing == null) {
                return Optional.empty();
            }
            packings.add(packing);
        }
        return Optional.of(packings);
    }

    /** Cost in grains of a price as priced, minor units, by supplier {@code k}. */
    public long grains(long price, int k) {
        return k == SHED ? 0 : Math.multiplyExact(price, taxFactor[k]);
    }

    /**
     * What an order costs, tax and the way home included, minor units.
     *
     * @param k the supplier
     * @param value goods as priced, minor units
     * @param way how it gets home; null for nothing
     */
    public long paid(int k, long value, @Nullable DeliveryOption way) {
        long charge = way == null ? 0 : way.charge();
        return way != null && way.fetched()
                ? Math.addExact(roundedHalfUp(grains(value, k)), charge)
                : roundedHalfUp(grains(Math.addExact(value, charge), k));
    }

    /** What a way home costs, grains. */
    public long grains(DeliveryOption way, int k) {
        return way.fetched() ? Math.multiplyExact(way.charge(), grain) : grains(way.charge(), k);
    }

    /** The rounding rule of an order: grains to the nearest minor unit, halves up. */
    long roundedHalfUp(long grains) {
        return Math.floorDiv(Math.addExact(2 * grains, grain), 2 * grain);
    }

    /** Whether tax may make an order's grains no whole minor units. */
    boolean roundsTax(int k) {
        return taxFactor[k] % grain != 0;
    }

    /** Quantities as whole numbers on one common scale. */
    static long[] onOneScale(List<BigDecimal> numbers) {
        int scale = 0;
        for (BigDecimal number : numbers) {
            scale = Math.max(scale, number.stripTrailingZeros().scale());
        }
        long[] whole = new long[numbers.size()];
        for (int i = 0; i < whole.length; i++) {
            whole[i] = numbers.get(i).movePointRight(scale).longValueExact();
        }
        return whole;
    }
}
