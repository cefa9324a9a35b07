package borderwright.engine.stock;

import java.util.ArrayList;
import java.util.List;

/** Patterns and how often each is cut; an answer to one {@link StockCase}. */
public final class Packing {
    private final List<CuttingPattern> patterns = new ArrayList<>();
    private final List<Integer> times = new ArrayList<>();

    public void add(CuttingPattern pattern, int howOften) {
        if (howOften > 0) {
            patterns.add(pattern);
            times.add(howOften);
        }
    }

    public void addAll(Packing other) {
        for (int p = 0; p < other.kinds(); p++) {
            add(other.pattern(p), other.times(p));
        }
    }

    public int kinds() {
        return patterns.size();
    }

    public CuttingPattern pattern(int p) {
        return patterns.get(p);
    }

    public int times(int p) {
        return times.get(p);
    }

    /** Boards used of each type. */
    public int[] boards(StockCase stock) {
        int[] boards = new int[stock.boards()];
        for (int p = 0; p < kinds(); p++) {
            boards[pattern(p).board()] += times(p);
        }
        return boards;
    }

    /** What the boards cost, whole packs and no fewer than are sold, and what cutting them costs. */
    public long cost(StockCase stock) {
        int[] boards = boards(stock);
        long cost = 0;
        for (int j = 0; j < boards.length; j++) {
            cost = Math.addExact(cost, Math.multiplyExact(stock.packsFor(j, boards[j]), stock.cost(j)));
        }
        return Math.addExact(cost, use(stock));
    }

    /** What cutting the boards costs besides them: offcuts that could have been kept. */
    public long use(StockCase stock) {
        long use = 0;
        for (int p = 0; p < kinds() && stock.keeps(); p++) {
            long each = stock.use(pattern(p).board(), pattern(p).used(stock));
            use = Math.addExact(use, Math.multiplyExact(times(p), each));
        }
        return use;
    }

    /** Number of boards. */
    public long count() {
        long count = 0;
        for (int t : times) {
            count += t;
        }
        return count;
    }
}
