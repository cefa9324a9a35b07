package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.effort.Budget;
import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Packing;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongUnaryOperator;

/**
 * Branch and bound over listed patterns: the whole answer where the list is complete.
 *
 * <p>Board counts are branched on first, goods next, patterns last; the side that rounds up is looked at first. A side is
 * given up only when a bound in whole numbers (row prices rounded down, every column taken at its cheaper end) is above the
 * target.
 */
public final class PatternTree {
    private static final double WHOLE = 1e-6;

    private final ModelRows rows;
    private final AnswerListener answers;
    private final LongUnaryOperator up;
    private final Budget budget;
    private final LinearProgram program;
    private final long scale;
    private final int first;
    private final List<ModelColumn> columns = new ArrayList<>();
    private long target;
    private boolean exact = true;

    /**
     * A tree.
     *
     * @param model what is decided
     * @param patterns patterns of each part
     * @param target greatest cost of interest
     * @param up the least cost there can be that is no less than a bound
     */
    public PatternTree(
            BoardModel model,
            List<List<CuttingPattern>> patterns,
            long target,
            AnswerListener answers,
            LongUnaryOperator up,
            Budget budget) {
        this.rows = new ModelRows(model);
        this.target = target;
        this.answers = answers;
        this.up = up;
        this.budget = budget;
        this.scale = (long) Math.max(1, Math.min(1L << 36, Math.scalb(1.0, 50) / (target + 1.0)));
        this.program = rows.program(2 * (target + 1.0) / rows.costUnit + 10);
        this.first = program.columns();
        columns.addAll(rows.fixedColumns(target));
        for (int s = 0; s < patterns.size(); s++) {
            for (CuttingPattern pattern : patterns.get(s)) {
                columns.add(rows.pattern(s, pattern));
            }
        }
        for (ModelColumn column : columns) {
            rows.addTo(program, column, (double) column.most());
        }
    }

    /** Takes all boards there are, so that only how they are cut is left open. */
    void fixBoards() {
        for (int c = 0; c < columns.size(); c++) {
            Kind kind = columns.get(c).kind();
            if (kind == Kind.COUNT || kind == Kind.TOTAL) {
                double most = columns.get(c).most();
                program.bound(first + c, most, most);
            }
        }
    }

    /** Searches; whether every answer within the target that the patterns allow was found or excluded. */
    public boolean search() {
        if (!program.primal(budget)) {
            return false;
        }
        visit();
        return exact && !budget.isSpent();
    }

    private void visit() {
        if (budget.isSpent()) {
            return;
        }
        double cutoff = (target + 0.5) / rows.costUnit;
        boolean met = program.dual(cutoff, budget);
        if (budget.isSpent() || wholeBoundAboveTarget()) {
            return;
        }
        int branch = branchColumn();
        if (!met || (branch < 0 && program.unmet() > WHOLE)) {
            exact = false;
            return;
        }
        if (branch < 0) {
            accept();
            return;
        }
        int column = first + branch;
        double low = program.lower(column);
        double high = program.upper(column);
        ModelColumn kind = columns.get(branch);
        boolean few = kind.isTooFew(program.value(column), WHOLE);
        double floor = few ? 0 : Math.floor(program.value(column) + WHOLE);
        program.bound(column, few ? Math.max(low, (double) kind.least()) : floor + 1, high);
        visit();
        program.bound(column, low, floor);
        visit();
        program.bound(column, low, high);
    }

    /**
     * The first kind of column that is not whole; of counts the one nearest to a half, before these one with fewer than can be
     * bought, of patterns the fullest.
     */
    private int branchColumn() {
        int best = -1;
        Kind bestKind = Kind.PATTERN;
        double bestScore = 0;
        for (int c = 0; c < columns.size(); c++) {
            Kind kind = columns.get(c).kind();
            if (kind.compareTo(bestKind) > 0) {
                continue;
            }
            double x = program.value(first + c);
            double part = x - Math.floor(x + WHOLE);
            boolean few = columns.get(c).isTooFew(x, WHOLE);
            if (part > WHOLE || few) {
                double score = few ? 2 : kind == Kind.PATTERN ? part : 1 - Math.abs(part - 0.5);
                if (kind != bestKind || score > bestScore) {
                    best = c;
                    bestKind = kind;
                    bestScore = score;
                }
            }
        }
        return best;
    }

    private void accept() {
        int parts = rows.parts();
        List<Packing> packings = new ArrayList<>();
        int[][] packs = new int[parts][];
        int[][] left = new int[parts][];
        for (int s = 0; s < parts; s++) {
            packs[s] = new int[rows.stock(s).boards()];
            left[s] = rows.stock(s).copyOfDemand();
            packings.add(new Packing());
        }
        int[] extras = new int[rows.model.extras.size()];
        for (int c = 0; c < columns.size(); c++) {
            ModelColumn column = columns.get(c);
            int x = (int) Math.round(program.value(first + c));
            CuttingPattern pattern = column.pattern();
            if (column.kind() == Kind.COUNT) {
                packs[column.part()][column.index()] = x;
            } else if (column.kind() == Kind.EXTRA) {
                extras[column.index()] = x;
            } else if (x > 0 && pattern != null) {
                trimmed(pattern, x, left[column.part()], packings.get(column.part()));
            }
        }
        target = Math.min(target, answers.accept(packings, packs, extras));
    }

    /** Takes a pattern so often, without pieces that are no longer wanted. */
    static void trimmed(CuttingPattern pattern, int times, int[] left, Packing packing) {
        int often = times;
        while (often > 0) {
            int[] counts = new int[left.length];
            int repeats = often;
            boolean any = false;
            for (int k = 0; k < pattern.kinds(); k++) {
                int i = pattern.item(k);
                counts[i] = Math.min(pattern.count(k), left[i]);
                if (counts[i] > 0) {
                    any = true;
                    repeats = Math.min(repeats, left[i] / counts[i]);
                }
            }
            if (!any) {
                return;
            }
            for (int k = 0; k < pattern.kinds(); k++) {
                left[pattern.item(k)] -= counts[pattern.item(k)] * repeats;
            }
            packing.add(CuttingPattern.ofCounts(pattern.board(), counts), repeats);
            often -= repeats;
        }
    }

    /** Whether whole-number prices prove that this side holds no answer within the target. */
    private boolean wholeBoundAboveTarget() {
        long[] price = new long[rows.count];
        double top = Math.scalb(1.0, 61);
        long sum = 0;
        double rough = 0;
        for (int r = 0; r < price.length; r++) {
            double p = Math.floor(Math.max(0, program.price(r)) * rows.costUnit * scale * rows.unit(r));
            rough += p * Math.max(1, rows.required[r]);
            if (rough > top) {
                return false;
            }
            price[r] = (long) p;
            sum += price[r] * rows.required[r];
        }
        for (int c = 0; c < columns.size(); c++) {
            ModelColumn column = columns.get(c);
            long left = column.cost() * scale;
            double size = Math.abs((double) column.cost() * scale);
            for (int k = 0; k < column.entries(); k++) {
                left -= price[column.row(k)] * column.entry(k);
                size += (double) price[column.row(k)] * Math.abs(column.entry(k));
            }
            double end = left > 0 ? program.lower(first + c) : program.upper(first + c);
            rough = Math.max(rough, size);
            if (end != 0) {
                sum += left * (long) end;
                rough += Math.abs((double) left * end);
            }
            if (rough > top) {
                return false;
            }
        }
        return up.applyAsLong(Math.floorDiv(sum + scale - 1, scale)) > target;
    }
}
