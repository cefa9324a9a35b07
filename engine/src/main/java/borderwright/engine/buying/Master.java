package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import borderwright.engine.stock.Pattern;
import borderwright.engine.stock.PieceTable;
import borderwright.engine.stock.StockCase;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The master programme of column generation, and true bounds from it.
 *
 * <p>Each pricing fills one exact knapsack table for each section with the row prices as whole numbers, takes the best
 * pattern for every board and the best through every size, and works out a bound from the same table: no floating-point
 * tolerance enters it (Lagrange with whole-number prices; where nothing couples, the prices are scaled down until they are
 * feasible, after Farley 1990, from memory).
 */
final class Master {
    /** Row prices carry this many units for each unit of cost, fewer where sums would not fit in a long. */
    private static final double MOST_SCALE = 1L << 36;

    final Model model;
    final LinearProgram program;
    private final int[] itemRow;
    private final int[][] typeRow;
    private final int sideFrom;
    private final double costUnit;
    final double scale;
    private final long whole;
    private final PieceTable[] tables;
    private final int[][] limits;
    final Map<Column, Integer> known = new HashMap<>();
    final List<Column> columns = new ArrayList<>();
    private final int firstColumn;
    /** Row prices as whole numbers of the best bound, with what they leave of each column's cost. */
    private long[] prices = {};

    private long[] bestPrices = {};
    private long bestTotal = Long.MIN_VALUE;
    private long bound;
    private final long ceiling;
    /** Row prices are cut off here, so that the worth of a board fits in a long. */
    private final double highestPrice;

    private final double[] largestEntry;

    /**
     * A column: a pattern of a part, a pack of one of its boards, or an extra.
     *
     * @param part index of the part, -1 for extras
     * @param pattern the pattern, for a pack null
     * @param index board of a pack, or number of an extra; -1 for patterns
     */
    record Column(int part, @Nullable Pattern pattern, int index) {}

    /**
     * A master programme.
     *
     * @param model what is decided
     * @param ceiling cost of a known answer, or an upper limit on what is of interest
     */
    Master(Model model, long ceiling) {
        this.model = model;
        this.ceiling = ceiling;
        int parts = model.parts.size();
        this.itemRow = new int[parts];
        this.typeRow = new int[parts][];
        int rows = 0;
        double dearest = 1;
        for (int s = 0; s < parts; s++) {
            itemRow[s] = rows;
            rows += model.parts.get(s).sizes();
        }
        for (int s = 0; s < parts; s++) {
            StockCase stock = model.parts.get(s);
            typeRow[s] = new int[stock.boards()];
            for (int j = 0; j < stock.boards(); j++) {
                boolean binds = stock.isPacked(j)
                        || stock.available(j) < stock.pieces()
                        || (stock.isLimited(j) && model.sideRow[s][j] >= 0);
                typeRow[s][j] = binds && stock.available(j) > 0 ? rows++ : -1;
                dearest = Math.max(dearest, stock.cost(j) / (double) stock.pack(j));
            }
        }
        this.sideFrom = rows;
        rows += model.need.length;
        this.costUnit = dearest;
        this.scale = Math.max(1, Math.floor(Math.min(MOST_SCALE, Math.scalb(1.0, 58) / (ceiling + 1.0))));
        this.whole = (long) scale;
        double mostPerBoard = 1;
        for (StockCase stock : model.parts) {
            int n = stock.sizes();
            mostPerBoard = Math.max(mostPerBoard, n == 0 ? 1 : (double) stock.longest() / stock.size(n - 1) + 1);
        }
        this.highestPrice = Math.scalb(1.0, 59) / mostPerBoard;
        this.largestEntry = largestEntries(rows);
        this.program = program(rows);
        this.tables = new PieceTable[parts];
        this.limits = new int[parts][];
        for (int s = 0; s < parts; s++) {
            StockCase stock = model.parts.get(s);
            tables[s] = PieceTable.of(stock.copyOfSizes(), stock.longest());
            limits[s] = stock.copyOfDemand();
        }
        this.firstColumn = program.columns();
        addFixedColumns();
    }

    /** The greatest whole entry of each row, or what it requires where that is more. */
    private double[] largestEntries(int rows) {
        double[] largest = new double[rows];
        Arrays.fill(largest, 1);
        for (int k = 0; k < model.need.length; k++) {
            largest[sideFrom + k] = model.need[k];
        }
        for (Model.Extra extra : model.extras) {
            for (int k = 0; k < extra.row.length; k++) {
                int r = sideFrom + extra.row[k];
                largest[r] = Math.max(largest[r], (double) extra.value[k]);
            }
        }
        for (int s = 0; s < typeRow.length; s++) {
            StockCase stock = model.parts.get(s);
            for (int j = 0; j < typeRow[s].length; j++) {
                int r = typeRow[s][j];
                if (r >= 0) {
                    largest[r] = stock.isPacked(j) ? stock.pack(j) : stock.available(j) + 1.0;
                }
                int side = model.sideRow[s][j] < 0 ? -1 : sideFrom + model.sideRow[s][j];
                if (side >= 0) {
                    largest[side] = Math.max(largest[side], (double) model.sideValue[s][j]);
                }
            }
        }
        return largest;
    }

    private LinearProgram program(int rows) {
        double[] rhs = new double[rows];
        double[] artificial = new double[rows];
        boolean limited = false;
        for (int s = 0; s < typeRow.length; s++) {
            StockCase stock = model.parts.get(s);
            for (int j = 0; j < typeRow[s].length; j++) {
                if (typeRow[s][j] >= 0) {
                    rhs[typeRow[s][j]] = stock.isPacked(j) ? 0 : -stock.available(j);
                    artificial[typeRow[s][j]] = 1e4;
                    limited = true;
                }
            }
        }
        for (int s = 0; s < itemRow.length; s++) {
            for (int i = 0; i < model.parts.get(s).sizes(); i++) {
                rhs[itemRow[s] + i] = model.parts.get(s).demand(i);
                artificial[itemRow[s] + i] = limited || model.isCoupled() ? 1e4 : 10;
            }
        }
        for (int k = 0; k < model.need.length; k++) {
            rhs[sideFrom + k] = 1;
            artificial[sideFrom + k] = 1e5;
        }
        return new LinearProgram(rhs, artificial);
    }

    private void addFixedColumns() {
        for (int s = 0; s < typeRow.length; s++) {
            StockCase stock = model.parts.get(s);
            for (int j = 0; j < stock.boards(); j++) {
                if (stock.isPacked(j) && typeRow[s][j] >= 0) {
                    addPack(s, j, stock);
                }
            }
        }
        for (int e = 0; e < model.extras.size(); e++) {
            Model.Extra extra = model.extras.get(e);
            int[] rows = new int[extra.row.length];
            double[] entries = new double[rows.length];
            for (int k = 0; k < rows.length; k++) {
                rows[k] = sideFrom + extra.row[k];
                entries[k] = extra.value[k] / (double) model.need[extra.row[k]];
            }
            register(new Column(-1, null, e), extra.cost / costUnit, rows, entries, extra.most);
        }
    }

    private void addPack(int s, int j, StockCase stock) {
        int side = model.sideRow[s][j];
        int[] rows = side < 0 ? new int[] {typeRow[s][j]} : new int[] {typeRow[s][j], sideFrom + side};
        double[] entries = new double[rows.length];
        entries[0] = stock.pack(j);
        if (side >= 0) {
            entries[1] = model.sideValue[s][j] / (double) model.need[side];
        }
        register(
                new Column(s, null, j),
                stock.cost(j) / costUnit,
                rows,
                entries,
                Math.floorDiv(stock.available(j), stock.pack(j)));
    }

    private void register(Column column, double cost, int[] rows, double[] entries, double most) {
        known.put(column, columns.size());
        columns.add(column);
        program.add(cost, rows, entries, most);
    }

    /** Adds a pattern unless it is there; whether it was new. */
    boolean add(int s, Pattern pattern) {
        Column column = new Column(s, pattern, -1);
        if (known.containsKey(column)) {
            return false;
        }
        StockCase stock = model.parts.get(s);
        int j = pattern.board();
        int side = stock.isPacked(j) ? -1 : model.sideRow[s][j];
        int n = pattern.kinds() + (typeRow[s][j] >= 0 ? 1 : 0) + (side >= 0 ? 1 : 0);
        int[] rows = new int[n];
        double[] entries = new double[n];
        for (int k = 0; k < pattern.kinds(); k++) {
            rows[k] = itemRow[s] + pattern.item(k);
            entries[k] = pattern.count(k);
        }
        int at = pattern.kinds();
        if (typeRow[s][j] >= 0) {
            rows[at] = typeRow[s][j];
            entries[at++] = -1;
        }
        if (side >= 0) {
            rows[at] = sideFrom + side;
            entries[at] = model.sideValue[s][j] / (double) model.need[side];
        }
        register(column, stock.isPacked(j) ? 0 : stock.cost(j) / costUnit, rows, entries, Double.POSITIVE_INFINITY);
        return true;
    }

    /** Value of a column in the programme. */
    double value(int column) {
        return program.value(firstColumn + column);
    }

    int programColumn(int column) {
        return firstColumn + column;
    }

    int rowOfSize(int s, int i) {
        return itemRow[s] + i;
    }

    int rowOfBoard(int s, int j) {
        return typeRow[s][j];
    }

    int rowOfSide(int k) {
        return sideFrom + k;
    }

    double costUnit() {
        return costUnit;
    }

    /** Solves the programme to the end, or until the bound reaches {@code enough} or the budget is spent. */
    boolean solve(long enough, Budget budget) {
        while (program.primal(budget)) {
            boolean better = priceOut(budget, true);
            if (bound >= enough) {
                return true;
            }
            if (!better) {
                return true;
            }
        }
        return false;
    }

    /** Most pieces of each size in new patterns; the demand that is left while diving. */
    void limit(int s, int i, int most) {
        limits[s][i] = most;
    }

    /**
     * One pricing: new patterns, and a bound when {@code bounding}.
     *
     * @return whether a new pattern may lower the cost
     */
    boolean priceOut(Budget budget, boolean bounding) {
        wholePrices();
        boolean added = false;
        for (int s = 0; s < tables.length; s++) {
            StockCase stock = model.parts.get(s);
            long[] value = Arrays.copyOfRange(prices, itemRow[s], itemRow[s] + stock.sizes());
            tables[s].solve(value, limits[s]);
            budget.spend(tables[s].passes());
        }
        if (bounding) {
            takeBound();
        }
        for (int s = 0; s < tables.length; s++) {
            added |= addPatterns(s);
        }
        return added;
    }

    private void wholePrices() {
        prices = new long[program.rows];
        for (int r = 0; r < prices.length; r++) {
            double perUnit = r >= sideFrom ? 1.0 / model.need[r - sideFrom] : 1;
            double price = Math.floor(Math.max(0, program.price(r)) * costUnit * scale * perUnit);
            prices[r] = (long) Math.min(price, highestPrice / largestEntry[r]);
        }
    }

    /** What a pattern of a board may be worth before it lowers the cost, in scaled units. */
    long worthOf(long[] rowPrices, int s, int j) {
        StockCase stock = model.parts.get(s);
        long cost = typeRow[s][j] >= 0 ? rowPrices[typeRow[s][j]] : 0;
        if (!stock.isPacked(j)) {
            int side = model.sideRow[s][j];
            cost += whole * stock.cost(j);
            cost -= side < 0 ? 0 : rowPrices[sideFrom + side] * model.sideValue[s][j];
        }
        return cost;
    }

    /** What is left of a pack's or an extra's cost, in scaled units. */
    long leftOf(long[] rowPrices, Column column) {
        if (column.part() < 0) {
            Model.Extra extra = model.extras.get(column.index());
            long left = whole * extra.cost;
            for (int k = 0; k < extra.row.length; k++) {
                left -= rowPrices[sideFrom + extra.row[k]] * extra.value[k];
            }
            return left;
        }
        StockCase stock = model.parts.get(column.part());
        int j = column.index();
        int side = model.sideRow[column.part()][j];
        return whole * stock.cost(j)
                - stock.pack(j) * rowPrices[typeRow[column.part()][j]]
                - (side < 0 ? 0 : rowPrices[sideFrom + side] * model.sideValue[column.part()][j]);
    }

    /** The sum of prices times what is required, in scaled units. */
    private long required() {
        double rough = 0;
        for (int s = 0; s < itemRow.length; s++) {
            for (int i = 0; i < model.parts.get(s).sizes(); i++) {
                rough += (double) prices[itemRow[s] + i] * model.parts.get(s).demand(i);
            }
        }
        return rough > Math.scalb(1.0, 61) ? Long.MIN_VALUE / 2 : exactlyRequired();
    }

    private long exactlyRequired() {
        long sum = 0;
        for (int s = 0; s < itemRow.length; s++) {
            StockCase stock = model.parts.get(s);
            for (int i = 0; i < stock.sizes(); i++) {
                sum += prices[itemRow[s] + i] * stock.demand(i);
            }
            for (int j = 0; j < stock.boards(); j++) {
                if (typeRow[s][j] >= 0 && !stock.isPacked(j)) {
                    sum -= prices[typeRow[s][j]] * stock.available(j);
                }
            }
        }
        for (int k = 0; k < model.need.length; k++) {
            sum += prices[sideFrom + k] * model.need[k];
        }
        return sum;
    }

    private void takeBound() {
        long total = required();
        boolean exact = true;
        for (PieceTable table : tables) {
            exact &= table.isExact();
        }
        if (total == Long.MIN_VALUE / 2 || !exact) {
            return;
        }
        boolean simple = sideFrom == program.rows && model.extras.isEmpty();
        BigInteger top = BigInteger.ONE;
        BigInteger bottom = BigInteger.ONE;
        for (int s = 0; s < tables.length; s++) {
            StockCase stock = model.parts.get(s);
            for (int j = 0; j < stock.boards(); j++) {
                if (stock.available(j) < stock.pack(j)) {
                    continue;
                }
                simple &= typeRow[s][j] < 0;
                long worth = worthOf(prices, s, j);
                long best = tables[s].best(stock.capacity(j));
                if (best > worth) {
                    total = saturated(total, model.mostBoards(s, j, ceiling), best - worth);
                    BigInteger w = BigInteger.valueOf(worth);
                    BigInteger b = BigInteger.valueOf(best);
                    if (w.multiply(bottom).compareTo(top.multiply(b)) < 0) {
                        top = w;
                        bottom = b;
                    }
                }
            }
        }
        for (Column column : columns.subList(0, fixedColumns())) {
            long left = leftOf(prices, column);
            if (left < 0) {
                total = saturated(total, mostOf(column), -left);
            }
        }
        if (total > bestTotal) {
            bestTotal = total;
            bestPrices = prices.clone();
        }
        long better = total;
        if (simple && top.signum() >= 0) {
            long scaled =
                    BigInteger.valueOf(required()).multiply(top).divide(bottom).longValueExact();
            better = Math.max(better, scaled);
        }
        bound = Math.max(bound, better <= 0 ? 0 : (better + whole - 1) / whole);
    }

    private int fixedColumns() {
        int n = 0;
        while (n < columns.size() && columns.get(n).pattern() == null) {
            n++;
        }
        return n;
    }

    private long mostOf(Column column) {
        if (column.part() < 0) {
            return model.extras.get(column.index()).most;
        }
        StockCase stock = model.parts.get(column.part());
        return model.mostBoards(column.part(), column.index(), ceiling) / stock.pack(column.index()) + 1;
    }

    private static long saturated(long total, long times, long each) {
        if (total == Long.MIN_VALUE / 2
                || Math.multiplyHigh(times, each) != 0
                || times * each < 0
                || times * each > Long.MAX_VALUE / 4) {
            return Long.MIN_VALUE / 2;
        }
        return Math.max(Long.MIN_VALUE / 2, total - times * each);
    }

    private boolean addPatterns(int s) {
        StockCase stock = model.parts.get(s);
        int[] counts = new int[stock.sizes()];
        long least = Math.max(1, (long) (scale * costUnit * 1e-9));
        boolean added = false;
        for (int j = 0; j < stock.boards(); j++) {
            if (stock.available(j) < stock.pack(j)) {
                continue;
            }
            long capacity = stock.capacity(j);
            long worth = worthOf(prices, s, j) + least;
            if (tables[s].best(capacity) <= worth) {
                continue;
            }
            tables[s].counts(capacity, counts);
            added |= add(s, Pattern.ofCounts(j, counts));
            for (int i = 0; i < stock.sizes(); i++) {
                long rest = capacity - stock.size(i);
                if (rest >= 0 && limits[s][i] > 0 && tables[s].best(rest) + prices[itemRow[s] + i] > worth) {
                    tables[s].counts(rest, counts);
                    if (counts[i] < limits[s][i]) {
                        counts[i]++;
                        added |= add(s, Pattern.ofCounts(j, counts));
                    }
                }
            }
        }
        return added;
    }

    /** No answer costs less. */
    long bound() {
        return bound;
    }

    /** Whole row prices of the best bound; together with {@link #bestTotal} they limit what a column may waste. */
    long[] bestPrices() {
        return bestPrices;
    }

    /** The bound of {@link #bestPrices}, in scaled units. */
    long bestTotal() {
        return bestTotal;
    }

    double objective() {
        return program.objective() * costUnit;
    }
}
