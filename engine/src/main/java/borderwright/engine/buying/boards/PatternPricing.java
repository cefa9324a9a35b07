package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.effort.Budget;
import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.PieceTable;
import borderwright.engine.stock.StockCase;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;

/**
 * Row prices as whole numbers, the exact tables of what a board can be worth at these prices, and the bounds that follow.
 *
 * <p>No floating-point tolerance enters a bound: prices are rounded down to whole numbers, and whatever whole prices cost
 * the columns is charged at the greatest number of times each column may be taken (Lagrange); where nothing limits the
 * boards, the prices are scaled down instead until no board is worth more than it costs (Farley 1990, from memory).
 * Sums that do not fit in a long give no bound.
 */
public final class PatternPricing {
    /** Row prices carry this many units for each unit of cost, fewer where sums would not fit in a long. */
    private static final double MOST_SCALE = 1L << 36;
    /** Sums of prices are kept below this, so that charges against them fit too. */
    private static final double MOST_SUM = Math.scalb(1.0, 60);

    final ModelRows rows;
    /** Scaled units for each unit of cost. */
    public final long scale;

    private final PieceTable[] tables;
    private final int[][] limits;
    private final double[] highestPrice;
    private long[] prices;
    /** Scaled units of the present prices: fewer than {@link #scale} where a sum of them would not fit. */
    private long scaleNow;

    /**
     * Tables for a model.
     *
     * @param rows its rows
     * @param ceiling cost of a known answer, or an upper limit on what is of interest
     */
    PatternPricing(ModelRows rows, long ceiling) {
        this.rows = rows;
        this.scale = (long) Math.max(1, Math.floor(Math.min(MOST_SCALE, Math.scalb(1.0, 58) / (ceiling + 1.0))));
        this.scaleNow = scale;
        this.prices = new long[rows.count];
        int parts = rows.model.parts.size();
        this.tables = new PieceTable[parts];
        this.limits = new int[parts][];
        double mostPerBoard = 1;
        for (int s = 0; s < parts; s++) {
            StockCase stock = rows.model.parts.get(s);
            tables[s] = PieceTable.of(stock.copyOfSizes(), stock.longest());
            limits[s] = stock.copyOfDemand();
            int n = stock.sizes();
            mostPerBoard = Math.max(mostPerBoard, n == 0 ? 1 : (double) stock.longest() / stock.size(n - 1) + 1);
        }
        this.highestPrice = highestPrices(Math.scalb(1.0, 59) / mostPerBoard);
    }

    /** Prices are cut off so that a price times any entry, and the worth of any board, fits in a long. */
    private double[] highestPrices(double most) {
        double[] highest = new double[rows.count];
        double[] largest = new double[rows.count];
        for (int r = 0; r < largest.length; r++) {
            largest[r] = Math.max(1, r >= rows.sideFrom ? rows.required[r] : 1);
        }
        for (ModelColumn column : rows.fixedColumns(0)) {
            for (int k = 0; k < column.entries(); k++) {
                largest[column.row(k)] = Math.max(largest[column.row(k)], 16.0 * Math.abs(column.entry(k)));
            }
        }
        Arrays.setAll(highest, r -> most / largest[r]);
        return highest;
    }

    /** Most pieces of each size in patterns; the demand that is left while diving. No bound may be taken until it is reset. */
    void limit(int s, int i, int most) {
        limits[s][i] = most;
    }

    int limit(int s, int i) {
        return limits[s][i];
    }

    long[] copyOfPrices() {
        return prices.clone();
    }

    long price(int row) {
        return prices[row];
    }

    PieceTable table(int s) {
        return tables[s];
    }

    /**
     * Takes prices over from a linear programme, and works out the tables.
     *
     * @param blend share of earlier prices that is kept, 0 for none
     * @param earlier earlier prices
     */
    void take(LinearProgram program, double blend, long[] earlier, Budget budget) {
        scaleNow = scale;
        double excess = wholePrices(program, blend, earlier);
        if (excess > 1) {
            scaleNow = (long) Math.max(1, Math.floor(scale / (1.01 * excess)));
            wholePrices(program, 0, earlier);
        }
        fillTables(budget);
    }

    /** The same with prices that go by length, as dear as the cheapest board for its length allows. */
    void takeByLength(Budget budget) {
        scaleNow = scale;
        Arrays.fill(prices, 0);
        for (int s = 0; s < tables.length; s++) {
            StockCase stock = rows.model.parts.get(s);
            double least = Double.POSITIVE_INFINITY;
            for (int j = 0; j < stock.boards(); j++) {
                if (rows.isUsable(s, j) && stock.capacity(j) > 0) {
                    least = Math.min(least, (double) worthOf(s, j) / stock.capacity(j));
                }
            }
            for (int i = 0; i < stock.sizes() && least < Double.POSITIVE_INFINITY; i++) {
                int row = rows.rowOfSize(s, i);
                prices[row] = (long) Math.min(Math.floor(least * stock.size(i)), highestPrice[row]);
            }
        }
        fillTables(budget);
    }

    private void fillTables(Budget budget) {
        for (int s = 0; s < tables.length; s++) {
            StockCase stock = rows.model.parts.get(s);
            long[] value = Arrays.copyOfRange(prices, rows.itemRow[s], rows.itemRow[s] + stock.sizes());
            tables[s].solve(value, limits[s], budget);
        }
    }

    /** Rounds prices down to whole numbers; how many times too large one of them or their sum is. */
    private double wholePrices(LinearProgram program, double blend, long[] earlier) {
        double sum = 0;
        double excess = 0;
        for (int r = 0; r < prices.length; r++) {
            double price = Math.max(0, program.price(r)) * rows.costUnit * scaleNow * rows.unit(r);
            double blended = blend > 0 ? blend * earlier[r] + (1 - blend) * price : price;
            prices[r] = (long) Math.min(Math.floor(blended), highestPrice[r]);
            sum += blended * rows.required[r];
            excess = Math.max(excess, blended / highestPrice[r]);
        }
        return Math.max(excess, sum / MOST_SUM);
    }

    /** Whether the present prices have the full scale, so that their bounds compare with others. */
    boolean isFullScale() {
        return scaleNow == scale;
    }

    /** What a pattern of a board may be worth before it lowers the cost, in scaled units. */
    long worthOf(long[] rowPrices, int s, int j) {
        int row = rows.boardRow[s][j];
        return row >= 0
                ? rowPrices[row]
                : BoundSum.scaled(rows.model.parts.get(s).cost(j), scale);
    }

    /** The same at the present prices. */
    long worthOf(int s, int j) {
        int row = rows.boardRow[s][j];
        return row >= 0 ? prices[row] : BoundSum.scaled(rows.model.parts.get(s).cost(j), scaleNow);
    }

    /** Sum of prices times what is required, in scaled units; {@link BoundSum#NONE} when it does not fit. */
    private long required() {
        double rough = 0;
        for (int r = 0; r < prices.length; r++) {
            rough += (double) prices[r] * rows.required[r];
        }
        if (rough > Math.scalb(1.0, 61)) {
            return BoundSum.NONE;
        }
        long sum = 0;
        for (int r = 0; r < prices.length; r++) {
            sum += prices[r] * rows.required[r];
        }
        return sum;
    }

    /**
     * The bound of the tables in scaled units, counts and extras kept within bounds: no answer whose counts and extras are
     * within them costs less. Far below zero where there is none.
     *
     * @param fixed columns of counts and extras
     * @param low least number of each
     * @param high greatest number of each
     */
    long scaledBound(List<ModelColumn> fixed, long[] low, long[] high) {
        long total = required();
        for (int s = 0; s < tables.length && total != BoundSum.NONE; s++) {
            total = tables[s].isExact() ? total : BoundSum.NONE;
        }
        for (int c = 0; c < fixed.size() && total != BoundSum.NONE; c++) {
            ModelColumn column = fixed.get(c);
            long left = BoundSum.scaled(column.cost(), scaleNow) - column.worthAt(prices);
            total = left < 0 ? BoundSum.less(total, high[c], -left) : BoundSum.more(total, low[c], left);
            if (column.kind() == Kind.COUNT) {
                int s = column.part();
                long boards =
                        BoundSum.saturatedTimes(high[c], rows.model.parts.get(s).pack(column.index()));
                total = BoundSum.less(total, boards, overWorth(s, column.index()));
            }
        }
        for (int s = 0; s < tables.length && total != BoundSum.NONE; s++) {
            StockCase stock = rows.model.parts.get(s);
            for (int j = 0; j < stock.boards(); j++) {
                if (rows.isUsable(s, j) && rows.boardRow[s][j] < 0) {
                    total = BoundSum.less(total, Math.min(stock.available(j), stock.pieces()), overWorth(s, j));
                }
            }
        }
        return total;
    }

    private long overWorth(int s, int j) {
        StockCase stock = rows.model.parts.get(s);
        return Math.max(0, worthUsing(s, j, lengthFor(s, j, stock.capacity(j), 0), 0) - worthOf(s, j));
    }

    /**
     * The length of the best pieces for {@code room} of board {@code j}, what cutting costs considered.
     *
     * @param beside length that is used besides
     */
    long lengthFor(int s, int j, long room, long beside) {
        StockCase stock = rows.model.parts.get(s);
        return stock.keeps() ? tables[s].bestLength(room, used -> useOf(s, j, used + beside)) : room;
    }

    /** What the best pieces for a length of board {@code j} are worth, less what cutting costs. */
    long worthUsing(int s, int j, long length, long beside) {
        return tables[s].best(length) - useOf(s, j, length + beside);
    }

    private long useOf(int s, int j, long used) {
        StockCase stock = rows.model.parts.get(s);
        return stock.keeps() ? BoundSum.scaled(stock.use(j, used), scaleNow) : 0;
    }

    /** The bound, in scaled units, by scaling prices down; only where no side rows and no least counts matter. */
    long scaledDown() {
        long total = required();
        if (total == BoundSum.NONE || rows.sideFrom < rows.count) {
            return 0;
        }
        // Board rows require nothing, so the sum is that of the pieces.
        BigInteger top = BigInteger.ONE;
        BigInteger bottom = BigInteger.ONE;
        for (int s = 0; s < tables.length; s++) {
            if (!tables[s].isExact()) {
                return 0;
            }
            StockCase stock = rows.model.parts.get(s);
            for (int j = 0; j < stock.boards(); j++) {
                if (!rows.isUsable(s, j)) {
                    continue;
                }
                BigInteger cost = BigInteger.valueOf(scaleNow).multiply(BigInteger.valueOf(stock.cost(j)));
                BigInteger best = BigInteger.valueOf(tables[s].best(stock.capacity(j)))
                        .multiply(BigInteger.valueOf(stock.pack(j)));
                if (best.signum() > 0 && cost.multiply(bottom).compareTo(top.multiply(best)) < 0) {
                    top = cost;
                    bottom = best;
                }
            }
        }
        return BigInteger.valueOf(total).multiply(top).divide(bottom).longValueExact();
    }

    /** The least whole cost that a bound at the present prices allows, at least 0. */
    long wholeCost(long scaled) {
        return scaled <= 0 ? 0 : Math.floorDiv(scaled - 1, scaleNow) + 1;
    }
}
