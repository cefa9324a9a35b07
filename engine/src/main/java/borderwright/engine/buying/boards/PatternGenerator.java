package borderwright.engine.buying.boards;

import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.PieceTable;
import borderwright.engine.stock.StockCase;

/** Finds the patterns that lower the cost of a linear programme at the prices of its last pricing. */
final class PatternGenerator {
    /** Share of the unit of cost that a pattern must gain to be added: below it only noise is left. */
    private static final double LEAST_GAIN = 1e-9;

    private final ModelRows rows;
    private final PatternPricing pricing;
    private final PatternPool pool;

    PatternGenerator(ModelRows rows, PatternPricing pricing, PatternPool pool) {
        this.rows = rows;
        this.pricing = pricing;
        this.pool = pool;
    }

    /**
     * Adds the best pattern of every board of a part, and the best through every size, as far as they gain.
     *
     * @param most patterns through sizes at most
     * @return whether any was new
     */
    boolean add(int part, int most) {
        StockCase stock = rows.stock(part);
        PieceTable table = pricing.table(part);
        int[] counts = new int[stock.sizes()];
        long least = Math.max(1, (long) (pricing.scale * rows.costUnit * LEAST_GAIN));
        int added = 0;
        for (int board = 0; board < stock.boards(); board++) {
            if (!rows.isUsable(part, board)) {
                continue;
            }
            long length = pricing.lengthFor(part, board, stock.capacity(board), 0);
            if (pricing.worthUsing(part, board, length, 0) > pricing.worthOf(part, board) + least) {
                table.counts(length, counts);
                added += pool.add(part, CuttingPattern.ofCounts(board, counts)) ? 1 : 0;
            }
        }
        for (int size = 0; size < stock.sizes() && added < most; size++) {
            int board = pricing.limit(part, size) > 0 ? bestThrough(part, size, least) : -1;
            if (board >= 0) {
                table.counts(
                        pricing.lengthFor(part, board, stock.capacity(board) - stock.size(size), stock.size(size)),
                        counts);
                if (counts[size] < pricing.limit(part, size)) {
                    counts[size]++;
                    added += pool.add(part, CuttingPattern.ofCounts(board, counts)) ? 1 : 0;
                }
            }
        }
        return added > 0;
    }

    /** The board whose best pattern with a size gains most, and at least so much; -1 when there is none. */
    private int bestThrough(int part, int size, long least) {
        StockCase stock = rows.stock(part);
        long price = pricing.price(rows.rowOfSize(part, size));
        int best = -1;
        long most = least;
        for (int board = 0; board < stock.boards(); board++) {
            long rest = stock.capacity(board) - stock.size(size);
            if (rest >= 0 && rows.isUsable(part, board)) {
                long length = pricing.lengthFor(part, board, rest, stock.size(size));
                long gain = pricing.worthUsing(part, board, length, stock.size(size))
                        + price
                        - pricing.worthOf(part, board);
                if (gain > most) {
                    most = gain;
                    best = board;
                }
            }
        }
        return best;
    }
}
