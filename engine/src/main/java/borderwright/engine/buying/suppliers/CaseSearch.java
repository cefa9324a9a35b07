package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.boards.SectionSearch;
import borderwright.engine.buying.list.Progress;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.suppliers.SupplierCase.Stage;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.MaterialBound;
import borderwright.engine.stock.Packing;
import java.util.ArrayList;
import java.util.Comparator;
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
public final class CaseSearch {
    private static final int MOST_CASES = 1000;

    private final ShoppingCase shopping;
    private final Budget budget;
    private final Incumbent incumbent;
    private final SharedSearches sections;
    private final List<SupplierCase> cases = new ArrayList<>();
    private final Map<SupplierCase, CoupledSearch> together = new HashMap<>();
    private final @Nullable List<Packing> known;
    private long bound;

    /**
     * A search that has not begun.
     *
     * @param known packings to begin with, one for each section; null for none
     */
    public CaseSearch(ShoppingCase shopping, @Nullable List<Packing> known, Budget budget, Progress progress) {
        this.shopping = shopping;
        this.known = known;
        this.budget = budget;
        this.incumbent = new Incumbent(shopping, progress);
        this.sections = new SharedSearches(shopping, budget);
    }

    /** The best purchase found; null when none was. */
    @Nullable
    public Purchase best() {
        return incumbent.best();
    }

    /** No purchase costs less, minor units; {@link Long#MAX_VALUE} when there can be none. */
    public long bound() {
        return bound;
    }

    /** Each supplier alone, as far as it was looked at; empty where there is only one. */
    public List<ShoppingAnswer.Alternative> alternatives() {
        List<ShoppingAnswer.Alternative> alone = new ArrayList<>();
        for (int k = 0; k < shopping.suppliers.size() && shopping.suppliers.size() > 1; k++) {
            long cost = Long.MAX_VALUE;
            long least = Long.MAX_VALUE;
            for (SupplierCase c : cases) {
                if (c.onlySupplier() == k) {
                    if (!c.hasReached(Stage.TRIED) && c.bound() < Long.MAX_VALUE) {
                        offerSeparate(c);
                    }
                    cost = Math.min(cost, c.cost());
                    least = Math.min(least, c.bound());
                }
            }
            boolean possible = least < Long.MAX_VALUE;
            alone.add(new ShoppingAnswer.Alternative(
                    shopping.suppliers.get(k).name(), possible, cost, Math.min(least, cost)));
        }
        return alone;
    }

    public CaseSearch run() {
        cases.addAll(SupplierCase.all(shopping, MOST_CASES));
        if (cases.isEmpty()) {
            bound = Long.MAX_VALUE;
            return this;
        }
        for (SupplierCase c : cases) {
            c.raiseBound(c.wholeBound(simpleBound(c)));
        }
        tryEach();
        long effort = 2000;
        while (true) {
            SupplierCase next = cases.get(0);
            for (SupplierCase c : cases) {
                next = c.bound() < next.bound() ? c : next;
            }
            bound = next.bound();
            if (next.bound() >= incumbent.cost()) {
                return this;
            }
            // Until there is a basket, every case is looked at once, whatever the budget.
            if (budget.isSpent()) {
                return this;
            }
            long before = next.bound();
            Budget part = budget.part(effort);
            advance(next, part, effort);
            budget.spend(1000 * part.used() + 1000);
            if (next.bound() == before && next.hasReached(Stage.SEARCHED)) {
                effort = Math.min(effort * 2, Long.MAX_VALUE / 4);
            }
            incumbent.atLeast(bound);
        }
    }

    /** A first basket for every case that can still be the best: heuristics cost next to nothing. */
    private void tryEach() {
        List<Packing> packings = known;
        if (packings != null) {
            cases.forEach(c -> offerKnown(c, packings));
        }
        List<SupplierCase> promising = new ArrayList<>(cases);
        promising.sort(Comparator.comparingLong(c -> c.bound()));
        for (SupplierCase c : promising) {
            if (c.bound() < incumbent.cost() && (incumbent.best() == null || !budget.isSpent())) {
                c.reach(Stage.TRIED);
                offerSeparate(c);
            }
        }
    }

    /** Packings known from elsewhere, in a case that allows their boards. */
    private void offerKnown(SupplierCase c, List<Packing> packings) {
        for (int s = 0; s < packings.size(); s++) {
            int[] boards = packings.get(s).boards(shopping.sections.get(s).stock);
            for (int j = 0; j < boards.length; j++) {
                if (boards[j] > 0 && !c.allows(shopping.sections.get(s), j)) {
                    return;
                }
            }
        }
        for (int s = 0; s < packings.size(); s++) {
            sections.of(c, shopping.sections.get(s)).know(packings.get(s));
        }
        Purchase purchase = sections.purchase(c, packings);
        if (purchase != null) {
            incumbent.offer(c, purchase);
        }
    }

    private long simpleBound(SupplierCase c) {
        long grains = 0;
        for (ShoppingSection section : shopping.sections) {
            long part = MaterialBound.of(c.restricted(section));
            if (part == Long.MAX_VALUE) {
                return Long.MAX_VALUE;
            }
            grains = Math.addExact(grains, part);
        }
        long goods = leastGoodsGrains(c);
        if (goods < 0) {
            return Long.MAX_VALUE;
        }
        boolean paysBack = shopping.problem.offcuts().counts();
        return paysBack ? grains + goods : Math.max(grains + goods, c.leastGrains());
    }

    /** What the goods of a case cost at least, grains; -1 when a need cannot be met. */
    private long leastGoodsGrains(SupplierCase c) {
        long grains = 0;
        for (GoodsCover cover : shopping.covers) {
            GoodsCover.Choice choice = c.cheapestGoods(cover);
            if (!cover.isMetBy(choice.counts())) {
                return -1;
            }
            grains = Math.addExact(grains, choice.least());
        }
        return grains;
    }

    private void advance(SupplierCase c, Budget part, long effort) {
        if (!c.hasReached(Stage.TRIED)) {
            c.reach(Stage.TRIED);
            offerSeparate(c);
        } else if (!c.hasReached(Stage.PRICED)) {
            c.reach(Stage.PRICED);
            for (ShoppingSection section : shopping.sections) {
                sections.of(c, section).solveProgramme(part);
            }
            offerSeparate(c);
        } else if (!c.hasReached(Stage.COUPLED) && c.isCoupled()) {
            c.reach(Stage.COUPLED);
            together(c).solveProgramme(part, effort);
        } else {
            c.reach(Stage.SEARCHED);
            searchOn(c, part, effort);
        }
    }

    /**
     * Searches sections one by one, and together where that does not settle the case. What is found of sections serves
     * every case that allows the same boards, so it has half of the work even where orders miss their thresholds.
     */
    private void searchOn(SupplierCase c, Budget part, long effort) {
        Purchase separate = c.isCoupled() ? sections.separate(c) : null;
        boolean apart = !c.isCoupled() || (separate != null && c.isMetBy(separate.value));
        long each = (apart ? effort : effort / 2) / Math.max(1, shopping.sections.size());
        boolean proven = true;
        for (ShoppingSection section : shopping.sections) {
            SectionSearch search = sections.of(c, section);
            Budget share = part.part(each);
            search.run(share);
            part.spend(1000 * share.used());
            proven &= search.isProven();
        }
        offerSeparate(c);
        if ((apart && !proven) || part.isSpent() || c.bound() >= incumbent.cost()) {
            return;
        }
        CoupledSearch coupled = together(c);
        coupled.solveProgramme(part, effort);
        coupled.search(part);
    }

    private CoupledSearch together(SupplierCase c) {
        return together.computeIfAbsent(c, k -> new CoupledSearch(shopping, k, sections, incumbent));
    }

    /** The basket of each section's own best packing and the cheapest goods, and the bound that these give. */
    private void offerSeparate(SupplierCase c) {
        long grains = sections.bound(c);
        long goods = leastGoodsGrains(c);
        boolean possible = grains != Long.MAX_VALUE && goods >= 0;
        c.raiseBound(c.wholeBound(possible ? Math.addExact(grains, goods) : Long.MAX_VALUE));
        Purchase separate = sections.separate(c);
        if (separate != null) {
            incumbent.offer(c, separate);
        }
    }
}
