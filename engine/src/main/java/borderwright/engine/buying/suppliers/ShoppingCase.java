package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.BoardRule;
import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.PatternRule;
import borderwright.engine.stock.StockCase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
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
    public final List<Section> sections = new ArrayList<>();
    final List<GoodsCover> covers = new ArrayList<>();
    public final List<GoodsNeed> unpriced = new ArrayList<>();
    /** Ways of getting an order home that may be of use. */
    final DeliveryOptions ways;

    private final long[] taxFactor;

    public ShoppingCase(ShoppingProblem problem) {
        this.problem = problem;
        Map<String, Integer> number = numberSuppliers();
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
        this.ways = new DeliveryOptions(this);
        Map<String, List<Demand>> bySection = new LinkedHashMap<>();
        for (Demand demand : problem.demands()) {
            bySection.computeIfAbsent(demand.section(), s -> new ArrayList<>()).add(demand);
        }
        if (ways.haveMarks()) {
            // Boards that nothing is cut from may still bring an order to its mark.
            problem.boards().forEach(b -> bySection.computeIfAbsent(b.section(), s -> new ArrayList<>()));
        }
        bySection.forEach((name, demands) -> sections.add(new Section(this, name, demands, number)));
        for (GoodsNeed need : problem.needs()) {
            addCover(need, number);
        }
    }

    private Map<String, Integer> numberSuppliers() {
        Map<String, SupplierTerms> terms = new HashMap<>();
        problem.terms().forEach(t -> terms.put(t.name(), t));
        Map<String, Integer> number = new HashMap<>();
        List<String> names = new ArrayList<>();
        problem.boards().forEach(b -> names.add(b.supplier()));
        problem.goods().forEach(g -> names.add(g.supplier()));
        for (String name : names) {
            if (!number.containsKey(name)) {
                number.put(name, suppliers.size());
                suppliers.add(terms.getOrDefault(name, SupplierTerms.none(name)));
            }
        }
        return number;
    }

    private void addCover(GoodsNeed need, Map<String, Integer> number) {
        List<GoodsOffer> offers = new ArrayList<>();
        for (GoodsOffer offer : problem.goods()) {
            if (offer.item().equals(need.item())
                    && offer.available() >= offer.least()
                    && ways.carry(number.getOrDefault(offer.supplier(), SHED), offer)) {
                offers.add(offer);
            }
        }
        GoodsCover cover = new GoodsCover(
                need,
                offers,
                offers.stream()
                        .mapToInt(o -> number.getOrDefault(o.supplier(), SHED))
                        .toArray());
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
        for (Section section : sections) {
            Packing packing = section.packing(known.boards().stream()
                    .filter(b -> b.section().equals(section.name))
                    .toList());
            if (packing == null) {
                return Optional.empty();
            }
            packings.add(packing);
        }
        return admits(packings) ? Optional.of(packings) : Optional.empty();
    }

    /** Whether packings, one for each section, can be cut. */
    boolean admits(List<Packing> packings) {
        for (int s = 0; s < packings.size(); s++) {
            if (!sections.get(s).stock.admits(packings.get(s))) {
                return false;
            }
        }
        return true;
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

    /** One section: what must be cut, what it can be cut from. */
    public static final class Section {
        public final String name;
        public final StockCase stock;
        /** Supplier of each type of board. */
        final int[] supplier;
        /** Price of a pack of each type as priced, minor units; 0 when owned. */
        final long[] value;
        /** Offer of each type, null when owned. */
        public final List<BoardSource> sources = new ArrayList<>();
        /** Demands of each size, in the order of the sizes. */
        public final List<List<Demand>> demandsBySize = new ArrayList<>();

        public Section(ShoppingCase shopping, String name, List<Demand> demands, Map<String, Integer> number) {
            this.name = name;
            ShoppingProblem problem = shopping.problem;
            Map<Long, List<Demand>> byLength = new HashMap<>();
            demands.forEach(d -> byLength.computeIfAbsent(d.lengthTicks(), l -> new ArrayList<>())
                    .add(d));
            long[] lengths = byLength.keySet().stream()
                    .mapToLong(Long::longValue)
                    .sorted()
                    .toArray();
            long[] size = new long[lengths.length];
            int[] count = new int[lengths.length];
            long common = lengths.length == 0 ? 1 : 0;
            for (int i = 0; i < lengths.length; i++) {
                List<Demand> same = byLength.getOrDefault(lengths[lengths.length - 1 - i], List.of());
                demandsBySize.add(same);
                size[i] = lengths[lengths.length - 1 - i] + problem.kerfTicks();
                count[i] = Math.toIntExact(
                        same.stream().mapToLong(Demand::quantity).sum());
                common = gcd(common, size[i]);
            }
            for (OwnedStock owned : problem.owned()) {
                if (owned.section().equals(name) && owned.count() > 0) {
                    sources.add(new BoardSource(null, owned));
                }
            }
            for (BoardOffer offer : problem.boards()) {
                if (offer.section().equals(name)) {
                    if (offer.available() / offer.pack() >= offer.leastPacks()
                            && shopping.ways.carry(number.getOrDefault(offer.supplier(), SHED), offer)) {
                        sources.add(new BoardSource(offer, null));
                    }
                }
            }
            int types = sources.size();
            this.supplier = new int[types];
            this.value = new long[types];
            long[] capacity = new long[types];
            long[] cost = new long[types];
            int[] pack = new int[types];
            int[] available = new int[types];
            int[] least = new int[types];
            for (int j = 0; j < types; j++) {
                BoardSource source = sources.get(j);
                supplier[j] = number.getOrDefault(source.supplierName(), SHED);
                value[j] = source.packPrice();
                long usable = source.lengthTicks() - 2 * source.trimTicks(problem.trimTicks());
                capacity[j] = Math.max(0, usable + problem.kerfTicks()) / common;
                cost[j] = Math.addExact(
                        shopping.grains(value[j], supplier[j]), Math.multiplyExact(source.counted(), shopping.grain));
                pack[j] = source.pack();
                available[j] = source.available();
                least[j] = source.leastPacks();
            }
            for (int i = 0; i < size.length; i++) {
                size[i] /= common;
            }
            StockCase plain = new StockCase(size, count, capacity, cost, pack, available).soldFrom(least);
            StockCase kept = problem.offcuts().counts() ? keeping(plain, shopping, common) : plain;
            boolean isRuled = !problem.rule().equals(BoardRule.LENGTHS_ALONE);
            this.stock = isRuled ? kept.ruledBy(ruledBy(problem)) : kept;
        }

        /** The problem's rule, asked once for each pattern. */
        private PatternRule ruledBy(ShoppingProblem problem) {
            Map<CuttingPattern, Boolean> known = new HashMap<>();
            return pattern -> known.computeIfAbsent(pattern, p -> {
                BoardSource source = sources.get(p.board());
                List<String> labels = new ArrayList<>();
                for (int k = 0; k < p.kinds(); k++) {
                    int open = p.count(k);
                    for (Demand demand : demandsBySize.get(p.item(k))) {
                        int taken = Math.min(open, demand.quantity());
                        labels.addAll(Collections.nCopies(taken, demand.label()));
                        open -= taken;
                    }
                }
                long usable = source.lengthTicks() - 2 * source.trimTicks(problem.trimTicks());
                return problem.rule().admits(name, usable, labels);
            });
        }

        /** Boards of an answer to another list of the same pieces, as a packing; null where one is not among these. */
        @Nullable
        Packing packing(List<LaidBoard> laid) {
            Map<String, Integer> size = new HashMap<>();
            for (int i = 0; i < demandsBySize.size(); i++) {
                for (Demand demand : demandsBySize.get(i)) {
                    size.put(demand.label(), i);
                }
            }
            Packing packing = new Packing();
            int[] used = new int[stock.boards()];
            for (LaidBoard board : laid) {
                int[] counts = new int[stock.sizes()];
                for (LaidBoard.LaidPiece piece : board.pieces()) {
                    Integer i = size.get(piece.label());
                    if (i == null) {
                        return null;
                    }
                    counts[i]++;
                }
                int j = source(board, used);
                CuttingPattern pattern = CuttingPattern.ofCounts(Math.max(0, j), counts);
                if (j < 0 || pattern.used(stock) > stock.capacity(j)) {
                    return null;
                }
                used[j] += board.count();
                packing.add(pattern, board.count());
            }
            return packing;
        }

        private int source(LaidBoard board, int[] used) {
            for (int j = 0; j < used.length; j++) {
                BoardSource source = sources.get(j);
                if (source.from().equals(board.supplier())
                        && source.isOwned() == board.owned()
                        && source.lengthTicks() == board.lengthTicks()
                        && source.pricePerBoard() == board.price()
                        && used[j] + board.count() <= stock.available(j)) {
                    return j;
                }
            }
            return -1;
        }

        /** Whether boards of a type are bought and not owned. */
        boolean isBought(int j) {
            return supplier[j] != SHED;
        }

        private StockCase keeping(StockCase plain, ShoppingCase shopping, long common) {
            ShoppingProblem problem = shopping.problem;
            long[] most = new long[sources.size()];
            boolean[] isBought = new boolean[most.length];
            long[] beyond = new long[most.length];
            for (int j = 0; j < most.length; j++) {
                BoardSource source = sources.get(j);
                isBought[j] = isBought(j);
                long usable = source.lengthTicks() - 2 * source.trimTicks(problem.trimTicks());
                beyond[j] = usable - plain.capacity(j) * common;
                most[j] = source.isOwned() ? Long.MAX_VALUE / shopping.grain : source.pricePerBoard();
            }
            return plain.keeping(problem.offcuts(), common, beyond, shopping.grain, most, isBought);
        }

        private static long gcd(long a, long b) {
            return b == 0 ? a : gcd(b, a % b);
        }

        /** Sizes that no board to be had can give. */
        public int[] tooLong() {
            long longest = stock.longest();
            int[] all = new int[stock.sizes()];
            int n = 0;
            for (int i = 0; i < all.length; i++) {
                if (stock.size(i) > longest) {
                    all[n++] = i;
                }
            }
            return Arrays.copyOf(all, n);
        }
    }

    /** Whether a quantity is an exact multiple in longs; quantities and contents of a cover on one scale. */
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
