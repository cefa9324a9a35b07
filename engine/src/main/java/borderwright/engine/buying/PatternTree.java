package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.Pattern;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongUnaryOperator;

/**
 * Branch and bound over listed patterns: the whole answer where the list is complete, a good rule of thumb where it is
 * not.
 *
 * <p>Board counts are branched on first, goods next, patterns last; the side that rounds up is looked at first. A side is
 * given up only when a bound in whole numbers (row prices rounded down, every column taken at its cheaper end) is above the
 * target.
 */
final class PatternTree {
    /** Told of every answer found. */
    interface Leaf {
        /**
         * An answer.
         *
         * @return the new target: only answers that cost no more are of interest
         */
        long accept(List<Packing> packings, int[][] packs, int[] extras);
    }

    private static final double WHOLE = 1e-6;

    private final Model model;
    private final Leaf leaf;
    private final LongUnaryOperator up;
    private final Budget budget;
    private final LinearProgram program;
    private final double costUnit;
    private final long scale;
    private final int[] itemRow;
    private final int[][] boardRow;
    private final int sideFrom;
    private final int first;
    /** Of each column: its kind as branching order, part, pattern, board or extra, whole cost and entries. */
    private final List<Column> columns = new ArrayList<>();

    private final long[] required;
    private long target;
    private boolean exact = true;
    private long nodes;

    private static final class Column {
        private final int kind;
        private final int part;
        private final Pattern pattern;
        private final int index;
        private final long cost;
        private final int[] row;
        private final long[] entry;
        private final double most;

        Column(int kind, int part, Pattern pattern, int index, long cost, int[] row, long[] entry, double most) {
            this.kind = kind;
            this.part = part;
            this.pattern = pattern;
            this.index = index;
            this.cost = cost;
            this.row = row;
            this.entry = entry;
            this.most = most;
        }
    }

    private static final int COUNT = 0;
    private static final int EXTRA = 1;
    private static final int PATTERN = 2;
    private static final Pattern NO_PATTERN = new Pattern(-1, new int[0], new int[0]);

    /**
     * A tree.
     *
     * @param model what is decided
     * @param patterns patterns of each part
     * @param target greatest cost of interest
     * @param up the least cost there can be that is no less than a bound
     */
    PatternTree(
            Model model, List<List<Pattern>> patterns, long target, Leaf leaf, LongUnaryOperator up, Budget budget) {
        this.model = model;
        this.target = target;
        this.leaf = leaf;
        this.up = up;
        this.budget = budget;
        int parts = model.parts.size();
        this.itemRow = new int[parts];
        this.boardRow = new int[parts][];
        int rows = 0;
        double dearest = 1;
        for (int s = 0; s < parts; s++) {
            itemRow[s] = rows;
            rows += model.parts.get(s).sizes();
        }
        for (int s = 0; s < parts; s++) {
            StockCase stock = model.parts.get(s);
            boardRow[s] = new int[stock.boards()];
            int usable = 0;
            boolean plain = true;
            for (int j = 0; j < stock.boards(); j++) {
                usable += stock.available(j) >= stock.pack(j) ? 1 : 0;
                plain &= !stock.isPacked(j) && stock.available(j) >= stock.pieces() && model.sideRow[s][j] < 0;
                dearest = Math.max(dearest, stock.cost(j) / (double) stock.pack(j));
            }
            for (int j = 0; j < stock.boards(); j++) {
                boardRow[s][j] = stock.available(j) >= stock.pack(j) && (usable > 1 || !plain) ? rows++ : -1;
            }
        }
        this.sideFrom = rows;
        rows += model.need.length;
        this.costUnit = dearest;
        this.scale = (long) Math.max(1, Math.min(1L << 36, Math.scalb(1.0, 50) / (target + 1.0)));
        this.required = new long[rows];
        double[] rhs = new double[rows];
        double[] artificial = new double[rows];
        for (int s = 0; s < parts; s++) {
            for (int i = 0; i < model.parts.get(s).sizes(); i++) {
                required[itemRow[s] + i] = model.parts.get(s).demand(i);
            }
        }
        for (int k = 0; k < model.need.length; k++) {
            required[sideFrom + k] = model.need[k];
        }
        for (int r = 0; r < rows; r++) {
            rhs[r] = r >= sideFrom ? 1 : required[r];
            artificial[r] = (2 * (target + 1.0) / costUnit + 10) * (r >= sideFrom ? required[r] : 1);
        }
        this.program = new LinearProgram(rhs, artificial);
        this.first = program.columns();
        addColumns(patterns);
    }

    private void addColumns(List<List<Pattern>> patterns) {
        for (int s = 0; s < boardRow.length; s++) {
            StockCase stock = model.parts.get(s);
            for (int j = 0; j < stock.boards(); j++) {
                if (boardRow[s][j] >= 0) {
                    int side = model.sideRow[s][j];
                    int[] row = side < 0 ? new int[] {boardRow[s][j]} : new int[] {boardRow[s][j], sideFrom + side};
                    long[] entry =
                            side < 0 ? new long[] {stock.pack(j)} : new long[] {stock.pack(j), model.sideValue[s][j]};
                    long boards = model.mostBoards(s, j, Math.max(target, 0));
                    long most =
                            Math.min(stock.available(j) / stock.pack(j), (boards + stock.pack(j) - 1) / stock.pack(j));
                    add(new Column(COUNT, s, NO_PATTERN, j, stock.cost(j), row, entry, most));
                }
            }
        }
        for (int e = 0; e < model.extras.size(); e++) {
            Model.Extra extra = model.extras.get(e);
            int[] row = extra.row.clone();
            for (int k = 0; k < row.length; k++) {
                row[k] += sideFrom;
            }
            add(new Column(EXTRA, -1, NO_PATTERN, e, extra.cost, row, extra.value, extra.most));
        }
        for (int s = 0; s < patterns.size(); s++) {
            for (Pattern pattern : patterns.get(s)) {
                addPattern(s, pattern);
            }
        }
    }

    private void addPattern(int s, Pattern pattern) {
        StockCase stock = model.parts.get(s);
        int j = pattern.board();
        int n = pattern.kinds();
        boolean counted = boardRow[s][j] >= 0;
        int[] row = new int[counted ? n + 1 : n];
        long[] entry = new long[row.length];
        long most = stock.available(j);
        long needed = 0;
        for (int k = 0; k < n; k++) {
            int i = pattern.item(k);
            row[k] = itemRow[s] + i;
            entry[k] = pattern.count(k);
            needed = Math.max(needed, (stock.demand(i) + pattern.count(k) - 1L) / pattern.count(k));
        }
        if (counted) {
            row[n] = boardRow[s][j];
            entry[n] = -1;
        }
        add(new Column(PATTERN, s, pattern, -1, counted ? 0 : stock.cost(j), row, entry, Math.min(most, needed)));
    }

    private void add(Column column) {
        double[] entries = new double[column.row.length];
        for (int k = 0; k < entries.length; k++) {
            entries[k] = column.entry[k] / (column.row[k] >= sideFrom ? (double) required[column.row[k]] : 1);
        }
        columns.add(column);
        program.add(column.cost / costUnit, column.row, entries, column.most);
    }

    /** Searches; whether every answer within the target that the patterns allow was found or excluded. */
    boolean search() {
        if (!program.primal(budget)) {
            return false;
        }
        visit();
        return exact && !budget.isSpent();
    }

    long nodes() {
        return nodes;
    }

    private void visit() {
        nodes++;
        if (budget.isSpent()) {
            return;
        }
        double cutoff = (target + 0.5) / costUnit;
        boolean met = program.dual(cutoff, budget);
        if (budget.isSpent()) {
            return;
        }
        if (wholeBoundAboveTarget()) {
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
        double x = program.value(column);
        double floor = Math.floor(x + WHOLE);
        program.bound(column, floor + 1, high);
        visit();
        program.bound(column, low, floor);
        visit();
        program.bound(column, low, high);
    }

    /** The first kind of column that is not whole; of counts the one nearest to a half, of patterns the fullest. */
    private int branchColumn() {
        int best = -1;
        int bestKind = PATTERN + 1;
        double bestScore = 0;
        for (int c = 0; c < columns.size(); c++) {
            int kind = columns.get(c).kind;
            if (kind > bestKind) {
                continue;
            }
            double x = program.value(first + c);
            double part = x - Math.floor(x + WHOLE);
            if (part > WHOLE) {
                double score = kind == PATTERN ? part : 1 - Math.abs(part - 0.5);
                if (kind < bestKind || score > bestScore) {
                    best = c;
                    bestKind = kind;
                    bestScore = score;
                }
            }
        }
        return best;
    }

    private void accept() {
        List<Packing> packings = new ArrayList<>();
        int[][] packs = new int[boardRow.length][];
        int[][] left = new int[boardRow.length][];
        for (int s = 0; s < packs.length; s++) {
            packs[s] = new int[boardRow[s].length];
            left[s] = model.parts.get(s).copyOfDemand();
            packings.add(new Packing());
        }
        int[] extras = new int[model.extras.size()];
        for (int c = 0; c < columns.size(); c++) {
            Column column = columns.get(c);
            int x = (int) Math.round(program.value(first + c));
            if (column.kind == COUNT) {
                packs[column.part][column.index] = x;
            } else if (column.kind == EXTRA) {
                extras[column.index] = x;
            } else if (x > 0) {
                trimmed(column.pattern, x, left[column.part], packings.get(column.part));
            }
        }
        target = Math.min(target, leaf.accept(packings, packs, extras));
    }

    /** Takes a pattern so often, without pieces that are no longer wanted. */
    static void trimmed(Pattern pattern, int times, int[] left, Packing packing) {
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
            packing.add(Pattern.ofCounts(pattern.board(), counts), repeats);
            often -= repeats;
        }
    }

    /** Whether whole-number prices prove that this side holds no answer within the target. */
    private boolean wholeBoundAboveTarget() {
        long[] price = new long[required.length];
        double top = Math.scalb(1.0, 61);
        for (int r = 0; r < price.length; r++) {
            double perUnit = r >= sideFrom ? 1.0 / required[r] : 1;
            double p = Math.floor(Math.max(0, program.price(r)) * costUnit * scale * perUnit);
            if (p > top) {
                return false;
            }
            price[r] = (long) p;
        }
        long sum = 0;
        double rough = 0;
        for (int r = 0; r < price.length; r++) {
            sum += price[r] * required[r];
            rough += Math.abs((double) price[r] * required[r]);
        }
        for (int c = 0; c < columns.size(); c++) {
            Column column = columns.get(c);
            long left = column.cost * scale;
            double size = 0;
            for (int k = 0; k < column.row.length; k++) {
                left -= price[column.row[k]] * column.entry[k];
                size += (double) price[column.row[k]] * Math.abs(column.entry[k]);
            }
            rough = Math.max(rough, size);
            double end = left > 0 ? program.lower(first + c) : program.upper(first + c);
            if (end != 0) {
                sum += left * (long) end;
                rough += Math.abs((double) left * end);
            }
        }
        if (rough > top) {
            return false;
        }
        long bound = Math.floorDiv(sum + scale - 1, scale);
        return up.applyAsLong(bound) > target;
    }
}
