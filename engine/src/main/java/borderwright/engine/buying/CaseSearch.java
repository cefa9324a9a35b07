package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import borderwright.engine.stock.MaterialBound;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.Pattern;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which suppliers to buy from and on which terms: the case with the least bound first, each a little further every time
 * it comes up, until no case can be cheaper than the best basket.
 *
 * <p>Where nothing couples the sections of a case, each is searched on its own, and the searches are shared between cases
 * that allow the same boards. Where an order must reach a value, the case is one model.
 */
final class CaseSearch {
    private static final int MOST_CASES = 1000;
    private static final int MOST_PATTERNS = 20_000;
    private static final int TRIED = 1;
    private static final int PRICED = 2;
    private static final int COUPLED = 3;

    private final ShoppingCase shopping;
    private final Budget budget;
    private final Progress progress;
    private final TopUp topUp;
    private final Map<String, StockSearch> searches = new HashMap<>();
    private final List<SupplierCase> cases = new ArrayList<>();
    private final Map<SupplierCase, Master> masters = new HashMap<>();
    private final Map<SupplierCase, CountTree> trees = new HashMap<>();
    private @Nullable Purchase best;
    private long bound;

    CaseSearch(ShoppingCase shopping, Budget budget, Progress progress) {
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

    /** Each supplier alone, as far as it was looked at; empty where there is only one. */
    List<ShoppingAnswer.Alternative> alternatives() {
        List<ShoppingAnswer.Alternative> alone = new ArrayList<>();
        for (int k = 0; k < shopping.suppliers.size() && shopping.suppliers.size() > 1; k++) {
            long cost = Long.MAX_VALUE;
            long least = Long.MAX_VALUE;
            for (SupplierCase c : cases) {
                if (c.onlySupplier() == k) {
                    if (c.stage < TRIED && c.bound < Long.MAX_VALUE) {
                        offerSeparate(c);
                    }
                    cost = Math.min(cost, c.cost);
                    least = Math.min(least, c.bound);
                }
            }
            alone.add(new ShoppingAnswer.Alternative(
                    shopping.suppliers.get(k).name(), least < Long.MAX_VALUE, cost, Math.min(least, cost)));
        }
        return alone;
    }

    CaseSearch run() {
        cases.addAll(SupplierCase.all(shopping, MOST_CASES));
        if (cases.isEmpty()) {
            cases.add(loosest());
        }
        for (SupplierCase c : cases) {
            c.bound = c.wholeBound(simpleBound(c));
        }
        long effort = 2000;
        while (true) {
            SupplierCase next = cases.get(0);
            for (SupplierCase c : cases) {
                next = c.bound < next.bound ? c : next;
            }
            bound = next.bound;
            if (next.bound == Long.MAX_VALUE || (best != null && next.bound >= best.cost)) {
                return this;
            }
            if (best != null && budget.isSpent()) {
                return this;
            }
            if (best == null && next.stage >= TRIED && budget.isSpent()) {
                tryAll();
                return this;
            }
            long before = next.bound;
            Budget part = budget.part(effort);
            advance(next, part, effort);
            budget.spend(1000 * part.used() + 1000);
            if (next.bound == before && next.stage > COUPLED) {
                effort = Math.min(effort * 2, Long.MAX_VALUE / 4);
            }
            progress.better(best == null ? Long.MAX_VALUE : best.cost, bound);
        }
    }

    private void tryAll() {
        for (SupplierCase c : cases) {
            if (c.stage < TRIED && c.bound < Long.MAX_VALUE && best == null) {
                offerSeparate(c);
            }
        }
    }

    /** With very many suppliers: all of them, as if nobody charged for delivery; true as a bound. */
    private SupplierCase loosest() {
        int[] state = new int[shopping.suppliers.size()];
        Arrays.fill(state, SupplierCase.FREE);
        return new SupplierCase(shopping, state);
    }

    private long simpleBound(SupplierCase c) {
        long grains = 0;
        for (ShoppingCase.Section section : shopping.sections) {
            long part = MaterialBound.of(c.restricted(section));
            if (part == Long.MAX_VALUE) {
                return Long.MAX_VALUE;
            }
            grains = Math.addExact(grains, part);
        }
        long goods = leastGoodsGrains(c);
        return goods < 0 ? Long.MAX_VALUE : grains + goods;
    }

    /** What the goods of a case cost at least, grains; -1 when a need cannot be met. */
    private long leastGoodsGrains(SupplierCase c) {
        long grains = 0;
        for (Cover cover : shopping.covers) {
            Cover.Choice choice = c.cheapestGoods(cover);
            if (!cover.isMetBy(choice.counts())) {
                return -1;
            }
            grains = Math.addExact(grains, choice.least());
        }
        return grains;
    }

    private void advance(SupplierCase c, Budget part, long effort) {
        if (c.stage < TRIED) {
            c.stage = TRIED;
            offerSeparate(c);
        } else if (c.stage < PRICED) {
            c.stage = PRICED;
            for (ShoppingCase.Section section : shopping.sections) {
                searchOf(c, section).solveProgramme(part);
            }
            offerSeparate(c);
        } else if (c.stage < COUPLED && c.isCoupled()) {
            c.stage = COUPLED;
            solveTogether(c, part);
        } else {
            c.stage = Math.max(COUPLED + 1, c.stage + 1);
            searchOn(c, part, effort);
        }
    }

    /**
     * Searches sections one by one, and together where that does not settle the case. What is found of sections serves
     * every case that allows the same boards, so it has half of the work even where orders miss their marks.
     */
    private void searchOn(SupplierCase c, Budget part, long effort) {
        boolean apart = !c.isCoupled() || meetsMarks(c, separate(c));
        long each = (apart ? effort : effort / 2) / Math.max(1, shopping.sections.size());
        boolean proven = true;
        for (ShoppingCase.Section section : shopping.sections) {
            StockSearch search = searchOf(c, section);
            Budget share = part.part(each);
            search.run(share);
            part.spend(1000 * share.used());
            proven &= search.isProven();
        }
        offerSeparate(c);
        if ((apart && !proven) || !isOpen(c, part)) {
            return;
        }
        solveTogether(c, part);
        searchTogether(c, part);
    }

    private StockSearch searchOf(SupplierCase c, ShoppingCase.Section section) {
        StringBuilder key = new StringBuilder(section.name).append('\0');
        for (int j = 0; j < section.supplier.length; j++) {
            key.append(c.uses(section.supplier[j]) ? '1' : '0');
        }
        return searches.computeIfAbsent(key.toString(), k -> new StockSearch(c.restricted(section), budget));
    }

    /** The basket of each section's own best packing and the cheapest goods, and the bound that these give. */
    private void offerSeparate(SupplierCase c) {
        long grains = 0;
        for (ShoppingCase.Section section : shopping.sections) {
            StockSearch search = searchOf(c, section);
            grains = search.bound() == Long.MAX_VALUE || grains == Long.MAX_VALUE
                    ? Long.MAX_VALUE
                    : Math.addExact(grains, search.bound());
        }
        long goods = leastGoodsGrains(c);
        boolean possible = grains != Long.MAX_VALUE && goods >= 0;
        c.bound = Math.max(c.bound, c.wholeBound(possible ? Math.addExact(grains, goods) : Long.MAX_VALUE));
        Purchase separate = separate(c);
        if (separate != null) {
            offer(c, separate);
        }
    }

    /** Each section's own best packing and the cheapest goods; null while one of them is unknown. */
    private @Nullable Purchase separate(SupplierCase c) {
        List<Packing> packings = new ArrayList<>();
        for (ShoppingCase.Section section : shopping.sections) {
            Packing packing = searchOf(c, section).best();
            if (packing == null) {
                return null;
            }
            packings.add(packing);
        }
        int[][] counts = new int[shopping.covers.size()][];
        for (int i = 0; i < counts.length; i++) {
            Cover cover = shopping.covers.get(i);
            counts[i] = c.cheapestGoods(cover).counts();
            if (!cover.isMetBy(counts[i])) {
                return null;
            }
        }
        return new Purchase(shopping, packings, Purchase.packsFor(shopping, packings), counts);
    }

    /** Whether every order has the value that the case demands: then sections need not be searched together. */
    private static boolean meetsMarks(SupplierCase c, @Nullable Purchase purchase) {
        if (purchase == null) {
            return false;
        }
        for (int k = 0; k < c.state.length; k++) {
            if (purchase.value[k] < c.leastValue(k)) {
                return false;
            }
        }
        return true;
    }

    private void offer(SupplierCase c, Purchase found) {
        Purchase better = topUp.better(found);
        if (!better.meetsMinimums(shopping)) {
            return;
        }
        c.cost = Math.min(c.cost, better.cost);
        if (best == null
                || better.cost < best.cost
                || (better.cost == best.cost && better.boards(shopping) < best.boards(shopping))) {
            best = better;
            progress.better(better.cost, bound);
        }
    }

    private Master masterOf(SupplierCase c) {
        return masters.computeIfAbsent(
                c,
                k -> new Master(
                        c.model(), best == null ? c.sensibleGrains() : c.targetGrains(best.cost) + shopping.grain));
    }

    private void solveTogether(SupplierCase c, Budget part) {
        Master master = masterOf(c);
        for (int s = 0; s < shopping.sections.size(); s++) {
            Packing packing = searchOf(c, shopping.sections.get(s)).best();
            for (int p = 0; packing != null && p < packing.kinds(); p++) {
                master.add(s, packing.pattern(p));
            }
        }
        master.solve(target(c) + 1, part);
        settle(c, best == null && master.bound() > c.sensibleGrains(), master.bound());
    }

    /** Greatest grains of interest. */
    private long target(SupplierCase c) {
        return best == null ? c.sensibleGrains() : c.targetGrains(best.cost);
    }

    private void settle(SupplierCase c, boolean impossible, long boundGrains) {
        c.bound = Math.max(c.bound, impossible ? Long.MAX_VALUE : c.wholeBound(boundGrains));
    }

    private boolean isOpen(SupplierCase c, Budget part) {
        return !part.isSpent() && (best == null || c.bound < best.cost);
    }

    private void searchTogether(SupplierCase c, Budget part) {
        Master master = masterOf(c);
        if (isOpen(c, part)) {
            int seed = c.stage - COUPLED;
            new Dive(master, target(c) + 1, 0, seed, (p, packs, extras) -> accept(c, p, packs, extras), part).run();
        }
        if (isOpen(c, part)) {
            CountTree tree = trees.computeIfAbsent(
                    c,
                    k -> new CountTree(
                            master,
                            master.bound(),
                            target(c),
                            b -> b,
                            (packings, packs, extras) -> accept(c, packings, packs, extras)));
            boolean done = tree.run(target(c), part);
            settle(c, done && best == null, done ? target(c) + 1 : tree.bound());
        }
        if (isOpen(c, part) && c.stage % 3 == 0) {
            searchListed(c, master, part);
        }
    }

    /** Lists every pattern that a better basket may use, and searches these. */
    private void searchListed(SupplierCase c, Master master, Budget part) {
        long target = target(c);
        double gapSize = (double) target * master.pricing.scale - master.bestTotal();
        if (master.bestPrices().length == 0 || gapSize > Math.scalb(1.0, 61)) {
            return;
        }
        long gap = target * master.pricing.scale - master.bestTotal();
        List<List<Pattern>> patterns = new ArrayList<>();
        for (int s = 0; s < shopping.sections.size(); s++) {
            StockCase stock = master.rows.model.parts.get(s);
            int from = master.rows.rowOfSize(s, 0);
            long[] value = Arrays.copyOfRange(master.bestPrices(), from, from + stock.sizes());
            PatternList list = new PatternList(stock, value, MOST_PATTERNS, part);
            boolean complete = list.fits();
            for (int j = 0; j < stock.boards() && complete; j++) {
                if (stock.available(j) >= stock.pack(j)) {
                    complete = list.list(j, master.pricing.worthOf(master.bestPrices(), s, j) - gap);
                }
            }
            if (!complete) {
                return;
            }
            patterns.add(list.found());
        }
        PatternTree tree = new PatternTree(
                master.rows.model,
                patterns,
                target,
                (packings, packs, extras) -> accept(c, packings, packs, extras),
                b -> b,
                part);
        if (tree.search()) {
            c.bound = best == null ? Long.MAX_VALUE : Math.max(c.bound, best.cost);
        }
    }

    private long accept(SupplierCase c, List<Packing> packings, int[][] packs, int[] extras) {
        int[][] needed = Purchase.packsFor(shopping, packings);
        for (int s = 0; s < packs.length; s++) {
            for (int j = 0; j < packs[s].length; j++) {
                needed[s][j] = Math.max(packs[s][j], needed[s][j]);
            }
        }
        int[][] goods = new int[shopping.covers.size()][];
        int at = 0;
        for (int g = 0; g < goods.length; g++) {
            Cover cover = shopping.covers.get(g);
            goods[g] = Arrays.copyOfRange(extras, at, at + cover.offers.size());
            at += cover.offers.size();
            if (!cover.isMetBy(goods[g])) {
                goods[g] = c.cheapestGoods(cover).counts();
            }
            if (!cover.isMetBy(goods[g])) {
                return target(c);
            }
        }
        offer(c, new Purchase(shopping, packings, needed, goods));
        return target(c);
    }
}
