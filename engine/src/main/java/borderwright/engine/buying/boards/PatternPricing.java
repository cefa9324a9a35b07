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
        int parts = rows.parts();
        this.tables = new PieceTable[parts];
        this.limits = new int[parts][];
        double mostPerBoard = 1;
        for (int part = 0; part < parts; part++) {
            StockCase stock = rows.stock(part);
            tables[part] = PieceTable.of(stock.copyOfSizes(), stock.longest());
            limits[part] = stock.copyOfDemand();
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
    void limit(int part, int size, int most) {
        limits[part][size] = most;
    }

    int limit(int part, int size) {
        return limits[part][size];
    }

    long[] copyOfPrices() {
        return prices.clone();
    }

    long price(int row) {
        return prices[row];
    }

    PieceTable table(int part) {
        return tables[part];
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
        for (int part = 0; part < tables.length; part++) {
            StockCase stock = rows.stock(part);
            double least = Double.POSITIVE_INFINITY;
            for (int board = 0; board < stock.boards(); board++) {
                if (rows.isUsable(part, board) && stock.capacity(board) > 0) {
                    least = Math.min(least, (double) worthOf(part, board) / stock.capacity(board));
                }
            }
            for (int size = 0; size < stock.sizes() && least < Double.POSITIVE_INFINITY; size++) {
                int row = rows.rowOfSize(part, size);
                prices[row] = (long) Math.min(Math.floor(least * stock.size(size)), highestPrice[row]);
            }
        }
        fillTables(budget);
    }

    private void fillTables(Budget budget) {
        for (int part = 0; part < tables.length; part++) {
            StockCase stock = rows.stock(part);
            long[] value = Arrays.copyOfRange(prices, rows.rowOfSize(part, 0), rows.rowOfSize(part, stock.sizes()));
            tables[part].solve(value, limits[part], budget);
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
    long worthOf(long[] rowPrices, int part, int board) {
        int row = rows.rowOfBoard(part, board);
        return row >= 0 ? rowPrices[row] : BoundSum.scaled(rows.stock(part).cost(board), scale);
    }

    /** The same at the present prices. */
    long worthOf(int part, int board) {
        int row = rows.rowOfBoard(part, board);
        return row >= 0 ? prices[row] : BoundSum.scaled(rows.stock(part).cost(board), scaleNow);
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
        for (int part = 0; part < tables.length && total != BoundSum.NONE; part++) {
            total = tables[part].isExact() ? total : BoundSum.NONE;
        }
        for (int c = 0; c < fixed.size() && total != BoundSum.NONE; c++) {
            ModelColumn column = fixed.get(c);
            long left = BoundSum.scaled(column.cost(), scaleNow) - column.worthAt(prices);
            total = left < 0 ? BoundSum.less(total, high[c], -left) : BoundSum.more(total, low[c], left);
            if (column.kind() == Kind.COUNT) {
                int part = column.part();
                long boards = BoundSum.saturatedTimes(high[c], rows.stock(part).pack(column.index()));
                total = BoundSum.less(total, boards, overWorth(part, column.index()));
            }
        }
        for (int part = 0; part < tables.length && total != BoundSum.NONE; part++) {
            StockCase stock = rows.stock(part);
            for (int board = 0; board < stock.boards(); board++) {
                if (rows.isUsable(part, board) && !rows.isCounted(part, board)) {
                    total = BoundSum.less(
                            total, Math.min(stock.available(board), stock.pieces()), overWorth(part, board));
                }
            }
        }
        return total;
    }

    private long overWorth(int part, int board) {
        StockCase stock = rows.stock(part);
        return Math.max(
                0, worthUsing(part, board, lengthFor(part, board, stock.capacity(board), 0), 0) - worthOf(part, board));
    }

    /**
     * The length of the best pieces for {@code room} of board {@code board}, what cutting costs considered.
     *
     * @param beside length that is used besides
     */
    long lengthFor(int part, int board, long room, long beside) {
        StockCase stock = rows.stock(part);
        return stock.keeps() ? tables[part].bestLength(room, used -> useOf(part, board, used + beside)) : room;
    }

    /** What the best pieces for a length of board {@code board} are worth, less what cutting costs. */
    long worthUsing(int part, int board, long length, long beside) {
        return tables[part].best(length) - useOf(part, board, length + beside);
    }

    private long useOf(int part, int board, long used) {
        StockCase stock = rows.stock(part);
        return stock.keeps() ? BoundSum.scaled(stock.use(board, used), scaleNow) : 0;
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
        for (int part = 0; part < tables.length; part++) {
            if (!tables[part].isExact()) {
                return 0;
            }
            StockCase stock = rows.stock(part);
            for (int board = 0; board < stock.boards(); board++) {
                if (!rows.isUsable(part, board)) {
                    continue;
                }
                BigInteger cost = BigInteger.valueOf(scaleNow).multiply(BigInteger.valueOf(stock.cost(board)));
                BigInteger best = BigInteger.valueOf(tables[part].best(stock.capacity(board)))
                        .multiply(BigInteger.valueOf(stock.pack(board)));
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
