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
    boolean add(int s, int most) {
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
                added += pool.add(s, CuttingPattern.ofCounts(j, counts)) ? 1 : 0;
            }
        }
        for (int i = 0; i < stock.sizes() && added < most; i++) {
            int j = pricing.limit(s, i) > 0 ? bestThrough(s, i, least) : -1;
            if (j >= 0) {
                table.counts(pricing.lengthFor(s, j, stock.capacity(j) - stock.size(i), stock.size(i)), counts);
                if (counts[i] < pricing.limit(s, i)) {
                    counts[i]++;
                    added += pool.add(s, CuttingPattern.ofCounts(j, counts)) ? 1 : 0;
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
}
