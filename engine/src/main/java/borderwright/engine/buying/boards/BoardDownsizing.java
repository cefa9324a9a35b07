package borderwright.engine.buying.boards;

import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;

/** Moves each pattern to the cheapest board that still takes it, as far as there are such boards. */
final class BoardDownsizing {
    private BoardDownsizing() {}

    static Packing of(StockCase stock, Packing packing) {
        int[] used = packing.boards(stock);
        Packing smaller = new Packing();
        for (int p = 0; p < packing.kinds(); p++) {
            CuttingPattern pattern = packing.pattern(p);
            int left = packing.times(p);
            long need = pattern.used(stock);
            int from = pattern.board();
            while (left > 0 && !stock.isPacked(from)) {
                int to = cheapest(stock, used, need, from);
                if (to < 0) {
                    break;
                }
                int moved = stock.isLimited(to) ? Math.min(left, stock.available(to) - used[to]) : left;
                smaller.add(pattern.on(to), moved);
                used[to] += moved;
                used[from] -= moved;
                left -= moved;
            }
            smaller.add(pattern, left);
        }
        return smaller;
    }

    private static int cheapest(StockCase stock, int[] used, long need, int from) {
        int best = -1;
        for (int j = 0; j < stock.boards(); j++) {
            if (!stock.isPacked(j)
                    && stock.capacity(j) >= need
                    && used[j] < stock.available(j)
                    && costFor(stock, j, need) < costFor(stock, best < 0 ? from : best, need)) {
                best = j;
            }
        }
        return best;
    }

    private static long costFor(StockCase stock, int j, long used) {
        return stock.cost(j) + stock.use(j, used);
    }
}
