package borderwright.engine.buying.boards;

import borderwright.engine.effort.Budget;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.GreedyFill;
import borderwright.engine.stock.MaterialBound;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import borderwright.engine.stock.SubsetFill;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest packing of one section, with a bound; it can be interrupted and always holds the best so far.
 *
 * <p>Heuristics and simple bounds first; then column generation; then dives; then every pattern within the gap, and a
 * tree over them; then more dives that stray, while the budget lasts.
 */
public final class SectionSearch {
    private static final int MOST_DIVES = 10_000;
    private static final int MOST_FILLS = 20;
    /** Heuristic packings whose patterns column generation begins with. */
    private static final int FIRST_FILLS = 2;

    private static final long FILL_WORK = 20_000;

    private final StockCase stock;
    private @Nullable Packing best;
    private @Nullable MasterProgram master;
    private boolean solved;
    private @Nullable CountTree counts;
    private int dives;
    private long effort = 20_000;
    private long cost = Long.MAX_VALUE;
    private long bound;
    private final Budget first;
    private @Nullable AttainableCosts sums;

    /**
     * A search with the first packing and bounds.
     *
     * @param budget for the tables of the first bounds
     */
    public SectionSearch(StockCase stock, Budget budget) {
        this.stock = stock;
        this.bound = MaterialBound.of(stock);
        take(GreedyFill.pack(stock));
        if (bound < cost && SubsetFill.isQuick(stock)) {
            take(SubsetFill.pack(stock, 0, cost - 1, budget));
        }
        this.first = budget;
        raise(bound);
    }

    /** The best packing so far; null when none is known. */
    @Nullable
    public Packing best() {
        return best;
    }

    long cost() {
        return cost;
    }

    /** No packing costs less; {@link Long#MAX_VALUE} when there is none at all. */
    public long bound() {
        return bound;
    }

    public boolean isProven() {
        return bound >= cost;
    }

    /** Sums of prices, worked out when first asked for: a first answer does not wait for them. */
    private AttainableCosts reach() {
        if (sums == null) {
            sums = new AttainableCosts(stock, best == null ? 0 : cost, first);
        }
        return sums;
    }

    private void take(@Nullable Packing packing) {
        if (packing == null) {
            return;
        }
        keep(PriceBreakHeuristic.of(stock, BoardDownsizing.of(stock, packing)));
        if (stock.isAnySoldFrom()) {
            keep(PriceBreakHeuristic.of(stock, packing));
        }
        if (stock.isRuled()) {
            keep(packing);
        }
    }

    /** Takes a packing that is known from elsewhere. */
    public void know(Packing packing) {
        take(packing);
        raise(bound);
    }

    private void keep(Packing packing) {
        long itsCost = packing.cost(stock);
        if (itsCost < cost && stock.admits(packing)) {
            best = packing;
            cost = itsCost;
        }
    }

    private void raise(long newBound) {
        if (newBound == Long.MAX_VALUE) {
            bound = newBound;
        } else {
            long up = sums == null ? newBound : sums.up(newBound);
            bound = Math.max(bound, best == null ? newBound : Math.min(up, cost));
        }
    }

    /** Searches until the answer is proven or the budget is spent; may be called again to go on. */
    public SectionSearch run(Budget budget) {
        solveProgramme(budget);
        if (!isProven() && !solved && master != null && !budget.isSpent()) {
            dive(master, budget);
            solveProgramme(budget);
        }
        if (!isProven() && !budget.isSpent() && master != null) {
            improve(master, budget);
        }
        return this;
    }

    /** Raises the bound by column generation; once done it stays done. */
    public void solveProgramme(Budget budget) {
        if (isProven() || solved || stock.sizes() == 0) {
            return;
        }
        reach();
        raise(bound);
        fillBoards(budget);
        if (isProven() || budget.isSpent()) {
            return;
        }
        if (master == null) {
            master = new MasterProgram(BoardModel.of(stock), best == null ? safeCeiling() : cost);
            addFirstPatterns(master, budget);
        }
        // Once the programme costs no more than the bound, a dive may end the matter before the programme does.
        double roughly = best == null || dives > 0 ? Double.NEGATIVE_INFINITY : (double) bound;
        solved = master.solve(best == null ? Long.MAX_VALUE : reach().below(cost) + 1, roughly, budget)
                && master.objective() > roughly;
        raise(best == null && master.bound() > safeCeiling() ? Long.MAX_VALUE : master.bound());
    }

    /** Heuristics that waste little, while they are cheap. */
    private void fillBoards(Budget budget) {
        if (master != null || !SubsetFill.suits(stock)) {
            return;
        }
        long before = budget.used();
        for (int seed = 0; seed < MOST_FILLS && !isProven() && budget.used() - before < FILL_WORK; seed++) {
            take(SubsetFill.pack(stock, seed, cost - 1, budget));
        }
    }

    private long safeCeiling() {
        double sum = 0;
        for (int j = 0; j < stock.boards(); j++) {
            double boards = Math.min((double) stock.available(j), (double) stock.pieces());
            sum += Math.max(boards, stock.least(j)) * stock.cost(j);
        }
        return (long) Math.min(sum, Math.scalb(1.0, 55));
    }

    private void addFirstPatterns(MasterProgram master, Budget budget) {
        if (best != null) {
            for (int p = 0; p < best.kinds(); p++) {
                master.add(0, best.pattern(p));
            }
        }
        for (int seed = 1; seed <= FIRST_FILLS && SubsetFill.isCheap(stock); seed++) {
            Packing fill = SubsetFill.pack(stock, seed, Long.MAX_VALUE, budget);
            for (int p = 0; fill != null && p < fill.kinds(); p++) {
                master.add(0, fill.pattern(p));
            }
        }
        for (int j = 0; j < stock.boards(); j++) {
            for (int i = 0; i < stock.sizes() && stock.available(j) >= stock.pack(j); i++) {
                long most = Math.min(stock.demand(i), stock.capacity(j) / stock.size(i));
                if (most > 0) {
                    master.add(0, new CuttingPattern(j, new int[] {i}, new int[] {(int) most}));
                }
            }
        }
    }

    /** Dives, counts and listed patterns in turn, each with more work than the time before. */
    private void improve(MasterProgram programme, Budget budget) {
        while (!isProven() && !budget.isSpent() && dives < MOST_DIVES) {
            dive(programme, budget);
            if (isProven() || budget.isSpent()) {
                return;
            }
            Budget part = budget.part(effort);
            boolean settled = !programme.fixed().isEmpty() && overCounts(programme, part);
            budget.spend(1000 * part.used());
            if (!settled && !isProven() && dives % 3 == 1) {
                Budget listing = budget.part(effort);
                settled = overListedPatterns(programme, listing);
                budget.spend(1000 * listing.used());
            }
            if (settled) {
                return;
            }
            effort = Math.min(2 * effort, Long.MAX_VALUE / 4000);
        }
    }

    private long target() {
        return best == null ? safeCeiling() : reach().below(cost);
    }

    private void dive(MasterProgram programme, Budget budget) {
        new DivingHeuristic(programme, best == null ? Long.MAX_VALUE / 4 : cost, bound, dives++, this::accept, budget)
                .run();
    }

    /** Searches the numbers of boards; whether that settled the matter. */
    private boolean overCounts(MasterProgram programme, Budget budget) {
        if (counts == null) {
            counts = new CountTree(programme, bound, target(), reach()::up, this::accept);
        }
        boolean done = counts.run(target(), budget);
        settle(done, counts.bound());
        return done;
    }

    /** Lists what can still be better, and searches it; whether that settled the matter. */
    private boolean overListedPatterns(MasterProgram programme, Budget budget) {
        long target = target();
        OptionalLong gap = programme.best().gapTo(target);
        if (gap.isEmpty() || gap.getAsLong() < 0) {
            return false;
        }
        List<CuttingPattern> patterns = PatternList.within(programme, 0, gap.getAsLong(), budget);
        if (patterns == null || budget.isSpent()) {
            return false;
        }
        PatternTree tree =
                new PatternTree(BoardModel.of(stock), List.of(patterns), target, this::accept, reach()::up, budget);
        boolean done = tree.search();
        settle(done, bound);
        return done;
    }

    private void settle(boolean done, long newBound) {
        if (done && best == null) {
            bound = Long.MAX_VALUE;
        } else {
            raise(done ? cost : newBound);
        }
    }

    private long accept(List<Packing> packings, int[][] packs, int[] extras) {
        take(packings.get(0));
        return target();
    }
}
