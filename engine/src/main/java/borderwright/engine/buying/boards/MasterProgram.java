package borderwright.engine.buying.boards;

import borderwright.engine.effort.Budget;
import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.PieceTable;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The master programme of column generation: counts and extras from the start, patterns as pricing finds them.
 *
 * <p>Each pricing fills one exact knapsack table for each section, takes the best pattern for every board and the best
 * through every size, and works out a bound from the same table ({@link PatternPricing}). Prices are blended with those of the
 * best bound so far, which calms them (Wentges 1997, from memory).
 */
public final class MasterProgram {
    private static final double BLEND = 0.4;
    /** Share of the unit of cost that a pattern must gain to be added: below it only noise is left. */
    private static final double LEAST_GAIN = 1e-9;
    /** So much more of a size is asked for while column generation runs, in pieces. */
    private static final double DISTURBANCE = 1e-5;

    public final ModelRows rows;
    final LinearProgram program;
    public final PatternPricing pricing;
    /** Counts and extras. */
    final List<ModelColumn> fixed;
    /** Patterns, in the order in which they were added. */
    final List<ModelColumn> patterns = new ArrayList<>();

    private final int firstFixed;
    private final int firstPattern;
    private final Map<Integer, Map<CuttingPattern, Integer>> known = new HashMap<>();
    private final long[] low;
    private final long[] high;
    private boolean isRoot = true;
    private final boolean disturbs;
    private long bound;
    private long nodeTotal = Long.MIN_VALUE / 2;
    private long[] nodePrices = {};
    private long[] bestPrices = {};
    private final Map<Integer, PatternList.Worths> worths = new HashMap<>();
    private long bestTotal = Long.MIN_VALUE / 2;

    /**
     * A master programme.
     *
     * @param model what is decided
     * @param ceiling cost of a known answer, or an upper limit on what is of interest
     */
    public MasterProgram(BoardModel model, long ceiling) {
        this.rows = new ModelRows(model);
        this.pricing = new PatternPricing(rows, ceiling);
        boolean plain = !model.isCoupled()
                && Arrays.stream(rows.boardRow).flatMapToInt(Arrays::stream).allMatch(r -> r < 0);
        this.program = rows.program(plain ? 10 : Math.min(1e4, 2 * (ceiling + 1.0) / rows.costUnit + 10));
        this.fixed = rows.fixedColumns(ceiling);
        this.low = new long[fixed.size()];
        this.high = fixed.stream().mapToLong(ModelColumn::most).toArray();
        this.disturbs = plain;
        this.firstFixed = program.columns();
        for (ModelColumn column : fixed) {
            rows.addTo(program, column, (double) column.most());
        }
        this.firstPattern = program.columns();
    }

    /** Adds a pattern unless it is there, without the shortest pieces if all of them cannot be cut; whether it was new. */
    public boolean add(int s, CuttingPattern wanted) {
        StockCase stock = rows.model.parts.get(s);
        CuttingPattern pattern = wanted;
        while (!stock.admits(pattern)) {
            pattern = pattern.withoutLast();
        }
        if (pattern.kinds() == 0) {
            return false;
        }
        Map<CuttingPattern, Integer> ofPart = known.computeIfAbsent(s, k -> new HashMap<>());
        Integer before = ofPart.get(pattern);
        if (before != null) {
            return program.wake(firstPattern + before);
        }
        ofPart.put(pattern, patterns.size());
        ModelColumn column = rows.pattern(s, pattern);
        patterns.add(column);
        rows.addTo(program, column, Double.POSITIVE_INFINITY);
        return true;
    }

    /** Value of a pattern. */
    double patternValue(int pattern) {
        return program.value(firstPattern + pattern);
    }

    /** Value of a count or extra. */
    double fixedValue(int column) {
        return program.value(firstFixed + column);
    }

    /** What a pack of a board gains by its side row at the present prices, in cost; 0 where it has none. */
    public double sideWorth(int s, int j) {
        int side = rows.model.sideRow[s][j];
        if (side < 0) {
            return 0;
        }
        int row = rows.sideFrom + side;
        return Math.max(0, program.price(row)) * rows.costUnit * rows.unit(row) * rows.model.sideValue[s][j];
    }

    /** Sum of the packs of a part, each times a number for its board. */
    public double packsTimes(int s, long[] times) {
        double sum = 0;
        for (int c = 0; c < fixed.size(); c++) {
            ModelColumn column = fixed.get(c);
            if (column.kind() == ModelColumn.Kind.COUNT && column.part() == s) {
                sum += fixedValue(c) * times[column.index()];
            }
        }
        return sum;
    }

    /** Adds all patterns of another programme of the same parts. */
    public void addAll(MasterProgram other) {
        for (ModelColumn column : other.patterns) {
            CuttingPattern pattern = column.pattern();
            if (pattern != null) {
                add(column.part(), pattern);
            }
        }
    }

    long low(int column) {
        return low[column];
    }

    long high(int column) {
        return high[column];
    }

    /** Keeps counts and extras within bounds; the best bound is then that of these bounds alone. */
    void within(long[] newLow, long[] newHigh) {
        isRoot = true;
        for (int c = 0; c < low.length; c++) {
            if (low[c] != newLow[c] || high[c] != newHigh[c]) {
                low[c] = newLow[c];
                high[c] = newHigh[c];
                program.bound(firstFixed + c, (double) low[c], (double) high[c]);
            }
            isRoot &= low[c] == 0 && high[c] == fixed.get(c).most();
        }
        nodeTotal = Long.MIN_VALUE / 2;
        nodePrices = new long[0];
        bound = 0;
    }

    /** {@link #solve(long, double, Budget)} whatever the programme costs. */
    public boolean solve(long enough, Budget budget) {
        return solve(enough, Double.NEGATIVE_INFINITY, budget);
    }

    /**
     * Solves the programme to the end, or until the bound reaches {@code enough}, the programme costs no more than
     * {@code roughly}, or the budget is spent.
     *
     * @return whether it came to one of these ends before the budget was spent
     */
    public boolean solve(long enough, double roughly, Budget budget) {
        if (!disturbs) {
            return solveExactly(enough, roughly, budget);
        }
        require(DISTURBANCE, budget);
        boolean solved = solveExactly(enough, roughly, budget);
        require(0, budget);
        return solved;
    }

    /** Asks for a hair more of every size, each a different one, so that the method does not stall in one corner. */
    private void require(double more, Budget budget) {
        for (int s = 0; s < rows.itemRow.length; s++) {
            for (int i = 0; i < rows.model.parts.get(s).sizes(); i++) {
                int row = rows.rowOfSize(s, i);
                program.require(row, rows.required[row] + more * (1 + (row * 7919L % 1009) / 1009.0));
            }
        }
        program.dual(Double.POSITIVE_INFINITY, budget);
    }

    private boolean solveExactly(long enough, double roughly, Budget budget) {
        double before = Double.POSITIVE_INFINITY;
        if (disturbs && isRoot && nodePrices.length == 0) {
            startFromLengths(budget);
        }
        while (program.primal(budget)) {
            double now = program.objective();
            if (now * rows.costUnit <= roughly) {
                return true;
            }
            // Blended prices may miss what the programme's own prices find, so these have the last word.
            boolean blended = nodePrices.length > 0 && now < before - 1e-9 * Math.abs(now);
            before = now;
            boolean added = priceOut(blended, budget);
            if (!added && blended && bound < enough) {
                added = priceOut(false, budget);
            }
            if (bound >= enough || !added) {
                tidy();
                // A table that the budget cut short finds nothing either.
                return bound >= enough || !budget.isSpent();
            }
            if (program.awakes() > 8 * rows.count + 1000) {
                tidy();
            }
        }
        return false;
    }

    /** A first bound and first patterns at prices that go by length, so that prices swing less at the start. */
    private void startFromLengths(Budget budget) {
        pricing.takeByLength(budget);
        takeBound();
        for (int s = 0; s < rows.itemRow.length; s++) {
            addPatterns(s, Integer.MAX_VALUE);
        }
    }

    /** Passes over the patterns that cost most beyond what they gain, where there are many; pricing may find them again. */
    private void tidy() {
        int keep = 2 * rows.count + 200;
        if (program.awakes() < 2 * keep) {
            return;
        }
        program.keepCheapest(firstPattern, keep);
    }

    /**
     * Passes over the patterns that no answer of interest uses, and where there are many over those that cost most.
     *
     * @param most greatest value of the programme that is of interest
     */
    void narrow(double most) {
        program.sleep(firstPattern, Math.max(0, most - program.objective()) + 1e-7);
        tidy();
    }

    /** Passes over the patterns with more pieces than are still required. */
    void narrowToRequired() {
        program.sleepExcessive(firstPattern);
    }

    /** What the last pricing says that the programme cannot go under, roughly; 0 where boards are counted. */
    double leastValue() {
        double most = 1;
        for (int s = 0; s < rows.itemRow.length; s++) {
            StockCase stock = rows.model.parts.get(s);
            for (int j = 0; j < stock.boards(); j++) {
                if (rows.boardRow[s][j] >= 0) {
                    return 0;
                }
                if (rows.isUsable(s, j)) {
                    double best = pricing.table(s).best(stock.capacity(j));
                    most = Math.max(most, best / Math.max(1, pricing.worthOf(s, j)));
                }
            }
        }
        return program.objective() / most - 1e-7;
    }

    private boolean priceOut(boolean blended, Budget budget) {
        pricing.take(program, blended ? BLEND : 0, nodePrices, budget);
        takeBound();
        boolean added = false;
        for (int s = 0; s < rows.itemRow.length; s++) {
            added |= addPatterns(s, Integer.MAX_VALUE);
        }
        return added;
    }

    /** One pricing at the programme's own prices, without a bound; how many patterns at most for each section. */
    boolean priceOut(int most, Budget budget) {
        pricing.take(program, 0, nodePrices, budget);
        boolean added = false;
        for (int s = 0; s < rows.itemRow.length; s++) {
            added |= addPatterns(s, most);
        }
        return added;
    }

    private void takeBound() {
        long total = pricing.scaledBound(fixed, low, high);
        if (total > nodeTotal && pricing.isFullScale()) {
            nodeTotal = total;
            nodePrices = pricing.copyOfPrices();
            if (isRoot && total > bestTotal) {
                bestTotal = total;
                bestPrices = nodePrices;
                worths.clear();
            }
        }
        bound = Math.max(bound, pricing.wholeCost(total));
        if (total < Long.MAX_VALUE / 4) {
            bound = Math.max(bound, pricing.wholeCost(pricing.scaledDown()));
        }
    }

    private boolean addPatterns(int s, int most) {
        StockCase stock = rows.model.parts.get(s);
        PieceTable table = pricing.table(s);
        int[] counts = new int[stock.sizes()];
        long least = Math.max(1, (long) (pricing.scale * rows.costUnit * LEAST_GAIN));
        int added = 0;
        for (int j = 0; j < stock.boards(); j++) {
            if (!rows.isUsable(s, j)) {
                continue;
            }
            long length = pricing.lengthFor(s, j, stock.capacity(j), 0);
            if (pricing.worthUsing(s, j, length, 0) > pricing.worthOf(s, j) + least) {
                table.counts(length, counts);
                added += add(s, CuttingPattern.ofCounts(j, counts)) ? 1 : 0;
            }
        }
        for (int i = 0; i < stock.sizes() && added < most; i++) {
            int j = pricing.limit(s, i) > 0 ? bestThrough(s, i, least) : -1;
            if (j >= 0) {
                table.counts(pricing.lengthFor(s, j, stock.capacity(j) - stock.size(i), stock.size(i)), counts);
                if (counts[i] < pricing.limit(s, i)) {
                    counts[i]++;
                    added += add(s, CuttingPattern.ofCounts(j, counts)) ? 1 : 0;
                }
            }
        }
        return added > 0;
    }

    /** The board whose best pattern with a size gains most, and at least so much; -1 when there is none. */
    private int bestThrough(int s, int i, long least) {
        StockCase stock = rows.model.parts.get(s);
        long price = pricing.price(rows.rowOfSize(s, i));
        int best = -1;
        long most = least;
        for (int j = 0; j < stock.boards(); j++) {
            long rest = stock.capacity(j) - stock.size(i);
            if (rest >= 0 && rows.isUsable(s, j)) {
                long length = pricing.lengthFor(s, j, rest, stock.size(i));
                long gain = pricing.worthUsing(s, j, length, stock.size(i)) + price - pricing.worthOf(s, j);
                if (gain > most) {
                    most = gain;
                    best = j;
                }
            }
        }
        return best;
    }

    /** No answer within the present bounds costs less. */
    public long bound() {
        return bound;
    }

    /** Whole row prices of the best bound without bounds on counts; empty when there is none. */
    public long[] bestPrices() {
        return bestPrices;
    }

    /** What sizes of a part are worth for every length at {@link #bestPrices}. */
    PatternList.Worths worths(int s) {
        return worths.computeIfAbsent(s, k -> new PatternList.Worths());
    }

    /** The bound of {@link #bestPrices}, in scaled units. */
    public long bestTotal() {
        return bestTotal;
    }

    double objective() {
        return program.objective() * rows.costUnit;
    }
}
