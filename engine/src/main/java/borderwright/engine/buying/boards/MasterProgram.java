package borderwright.engine.buying.boards;

import borderwright.engine.effort.Budget;
import borderwright.engine.linear.Basis;
import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.CuttingPattern;
import java.util.List;

/**
 * The master programme of column generation: counts and extras from the start, patterns as pricing finds them.
 *
 * <p>Each pricing fills one exact knapsack table for each section, takes the best pattern for every board and the best
 * through every size, and works out a bound from the same table ({@link PatternPricing}). Prices are blended with those of the
 * best bound so far, which calms them (Wentges 1997, from memory).
 */
public final class MasterProgram {
    private static final double BLEND = 0.4;
    /** So much more of a size is asked for while column generation runs, in pieces. */
    private static final double DISTURBANCE = 1e-5;

    private final ModelRows rows;
    private final LinearProgram program;
    private final PatternPricing pricing;
    /** Counts and extras. */
    private final List<ModelColumn> fixed;

    private final int firstFixed;
    private final PatternPool pool;
    private final PatternGenerator generator;
    private final ProgramFigures figures;
    private final long[] low;
    private final long[] high;
    private final boolean disturbs;
    private final ProgramBound bound;

    /**
     * A master programme.
     *
     * @param model what is decided
     * @param ceiling cost of a known answer, or an upper limit on what is of interest
     */
    public MasterProgram(BoardModel model, long ceiling) {
        this.rows = new ModelRows(model);
        this.pricing = new PatternPricing(rows, ceiling);
        boolean plain = !model.isCoupled() && rows.countsNoBoard();
        this.program = rows.program(plain ? 10 : Math.min(1e4, 2 * (ceiling + 1.0) / rows.costUnit + 10));
        this.fixed = rows.fixedColumns(ceiling);
        this.low = new long[fixed.size()];
        this.high = fixed.stream().mapToLong(ModelColumn::most).toArray();
        this.disturbs = plain;
        this.bound = new ProgramBound(pricing, fixed, low, high);
        this.firstFixed = program.columns();
        for (ModelColumn column : fixed) {
            rows.addTo(program, column, (double) column.most());
        }
        this.pool = new PatternPool(rows, program);
        this.generator = new PatternGenerator(rows, pricing, pool);
        this.figures = new ProgramFigures(rows, program, pricing, fixed, firstFixed);
    }

    /** What is decided. */
    public BoardModel model() {
        return rows.model;
    }

    /** Rows and whole numbers of the model. */
    ModelRows rows() {
        return rows;
    }

    /** Columns of counts and extras. */
    List<ModelColumn> fixed() {
        return fixed;
    }

    /** Patterns, in the order in which they were added. */
    List<ModelColumn> patterns() {
        return pool.patterns();
    }

    /** Adds a pattern of a part unless it is there, without the shortest pieces if all of them cannot be cut. */
    public void add(int part, CuttingPattern pattern) {
        pool.add(part, pattern);
    }

    /** Adds all patterns of another programme of the same parts. */
    public void addAll(MasterProgram other) {
        pool.addAll(other.pool);
    }

    /** Restores the programme after its bounds or demands changed; whether every row is met. */
    boolean restore(Budget budget) {
        return program.dual(Double.POSITIVE_INFINITY, budget);
    }

    /** Solves the programme over the patterns that are there; whether it came to the end. */
    boolean optimise(Budget budget) {
        return program.primal(budget);
    }

    /** The basis as it is, to come back to by {@link #takeUp}. */
    Basis.Stand stand() {
        return program.stand();
    }

    void takeUp(Basis.Stand stand) {
        program.takeUp(stand);
    }

    /** Value of the programme, in its own unit {@link ModelRows#costUnit}. */
    double value() {
        return program.objective();
    }

    /** By how much rows are not met, in all. */
    double unmet() {
        return program.unmet();
    }

    /** Asks for so many pieces of a size, in all and at most in one pattern. */
    void requirePieces(int part, int size, int pieces) {
        program.require(rows.rowOfSize(part, size), pieces);
        pricing.limit(part, size, pieces);
    }

    /** Asks for so many boards besides those that patterns cut. */
    void requireBoards(int part, int board, int boards) {
        program.require(rows.rowOfBoard(part, board), boards);
    }

    /** Scaled units for each unit of cost, in which the prices of {@link #best} count. */
    long scale() {
        return pricing.scale;
    }

    /** What a pattern of a board may be worth at whole prices before it lowers the cost, scaled. */
    long worthOf(long[] prices, int part, int board) {
        return pricing.worthOf(prices, part, board);
    }

    /** What the solution at hand is worth to others. */
    public ProgramFigures figures() {
        return figures;
    }

    /** The bound at the present bounds of counts, and the best one at whatever counts. */
    public ProgramBound best() {
        return bound;
    }

    /** Value of a pattern. */
    double patternValue(int pattern) {
        return program.value(pool.first() + pattern);
    }

    /** Value of a count or extra. */
    double fixedValue(int column) {
        return program.value(firstFixed + column);
    }

    long low(int column) {
        return low[column];
    }

    long high(int column) {
        return high[column];
    }

    /** Keeps counts and extras within bounds; the best bound is then that of these bounds alone. */
    void within(long[] newLow, long[] newHigh) {
        for (int c = 0; c < low.length; c++) {
            if (low[c] != newLow[c] || high[c] != newHigh[c]) {
                low[c] = newLow[c];
                high[c] = newHigh[c];
                program.bound(firstFixed + c, (double) low[c], (double) high[c]);
            }
        }
        bound.startAnew();
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

    /** Asks for a little more of every size, each a different one, so that the method does not stall in one corner. */
    private void require(double more, Budget budget) {
        for (int part = 0; part < rows.parts(); part++) {
            for (int size = 0; size < rows.stock(part).sizes(); size++) {
                int row = rows.rowOfSize(part, size);
                program.require(row, rows.required[row] + more * (1 + (row * 7919L % 1009) / 1009.0));
            }
        }
        program.dual(Double.POSITIVE_INFINITY, budget);
    }

    private boolean solveExactly(long enough, double roughly, Budget budget) {
        double before = Double.POSITIVE_INFINITY;
        if (disturbs && bound.isRoot() && bound.prices().length == 0) {
            startFromLengths(budget);
        }
        while (program.primal(budget)) {
            double now = program.objective();
            if (now * rows.costUnit <= roughly) {
                return true;
            }
            // Blended prices may miss what the programme's own prices find, so these have the last word.
            boolean blended = bound.prices().length > 0 && now < before - 1e-9 * Math.abs(now);
            before = now;
            boolean added = priceOut(blended, budget);
            if (!added && blended && bound.cost() < enough) {
                added = priceOut(false, budget);
            }
            if (bound.cost() >= enough || !added) {
                pool.tidy();
                // A table that the budget cut short finds nothing either.
                return bound.cost() >= enough || !budget.isSpent();
            }
            if (program.awakes() > 8 * rows.count + 1000) {
                pool.tidy();
            }
        }
        return false;
    }

    /** A first bound and first patterns at prices that go by length, so that prices swing less at the start. */
    private void startFromLengths(Budget budget) {
        pricing.takeByLength(budget);
        bound.take();
        for (int part = 0; part < rows.parts(); part++) {
            generator.add(part, Integer.MAX_VALUE);
        }
    }

    /** {@link PatternPool#narrow}. */
    void narrow(double most) {
        pool.narrow(most);
    }

    /** {@link PatternPool#narrowToRequired}. */
    void narrowToRequired() {
        pool.narrowToRequired();
    }

    private boolean priceOut(boolean blended, Budget budget) {
        pricing.take(program, blended ? BLEND : 0, bound.prices(), budget);
        bound.take();
        boolean added = false;
        for (int part = 0; part < rows.parts(); part++) {
            added |= generator.add(part, Integer.MAX_VALUE);
        }
        return added;
    }

    /** One pricing at the programme's own prices, without a bound; how many patterns at most for each section. */
    boolean priceOut(int most, Budget budget) {
        pricing.take(program, 0, bound.prices(), budget);
        boolean added = false;
        for (int part = 0; part < rows.parts(); part++) {
            added |= generator.add(part, most);
        }
        return added;
    }

    /** No answer within the present bounds costs less. */
    public long bound() {
        return bound.cost();
    }

    double objective() {
        return program.objective() * rows.costUnit;
    }
}
