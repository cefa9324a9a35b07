package borderwright.engine.stock;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A first packing, fast: board by board, the longest piece that still fits first, on the board that gives its pieces at
 * the least cost per length; each pattern is repeated as often as pieces and boards allow.
 */
public final class GreedyFill {
    private final StockCase stock;
    private final int[] left;
    private final int[] boardsLeft;
    private final double[] unitCost;

    private GreedyFill(StockCase stock) {
        this.stock = stock;
        this.left = stock.copyOfDemand();
        this.boardsLeft = stock.copyOfAvailable();
        this.unitCost = new double[stock.boards()];
        for (int j = 0; j < unitCost.length; j++) {
            unitCost[j] = stock.cost(j) / (double) stock.pack(j);
            boardsLeft[j] = stock.isLimited(j) ? boardsLeft[j] / stock.pack(j) * stock.pack(j) : StockCase.UNLIMITED;
        }
    }

    /** A packing that serves every demand, or null when this rule of thumb finds none. */
    @Nullable
    public static Packing pack(StockCase stock) {
        return new GreedyFill(stock).run();
    }

    @Nullable
    private Packing run() {
        Packing packing = new Packing();
        int first = 0;
        while (true) {
            while (first < left.length && left[first] == 0) {
                first++;
            }
            if (first == left.length) {
                return packing;
            }
            Pattern best = bestFor(first);
            if (best == null) {
                return null;
            }
            int times = boardsLeft[best.board()];
            for (int k = 0; k < best.kinds(); k++) {
                times = Math.min(times, left[best.item(k)] / best.count(k));
            }
            for (int k = 0; k < best.kinds(); k++) {
                left[best.item(k)] -= times * best.count(k);
            }
            if (boardsLeft[best.board()] != StockCase.UNLIMITED) {
                boardsLeft[best.board()] -= times;
            }
            packing.add(best, times);
        }
    }

    /** The pattern of least cost per length among the boards that take size {@code first}. */
    @Nullable
    private Pattern bestFor(int first) {
        int bestBoard = -1;
        double bestRate = Double.POSITIVE_INFINITY;
        double bestFill = 0;
        int[] bestCounts = new int[0];
        int[] counts = new int[left.length];
        for (int j = 0; j < unitCost.length; j++) {
            if (boardsLeft[j] <= 0 || stock.capacity(j) < stock.size(first)) {
                continue;
            }
            long used = fill(j, first, counts);
            double rate = unitCost[j] / used;
            double filled = used / (double) stock.capacity(j);
            if (rate < bestRate || (rate == bestRate && filled > bestFill)) {
                bestRate = rate;
                bestFill = filled;
                bestBoard = j;
                bestCounts = counts.clone();
            }
        }
        return bestBoard < 0 ? null : cheapest(Pattern.ofCounts(bestBoard, bestCounts));
    }

    private long fill(int j, int first, int[] counts) {
        Arrays.fill(counts, 0);
        long room = stock.capacity(j);
        for (int i = first; i < left.length && room > 0; i++) {
            if (left[i] > 0 && stock.size(i) <= room) {
                counts[i] = (int) Math.min(left[i], room / stock.size(i));
                room -= counts[i] * stock.size(i);
            }
        }
        return stock.capacity(j) - room;
    }

    /** The pattern on the cheapest board that still takes all of it. */
    private Pattern cheapest(Pattern pattern) {
        long used = pattern.used(stock);
        int best = pattern.board();
        for (int j = 0; j < unitCost.length; j++) {
            if (boardsLeft[j] > 0 && stock.capacity(j) >= used && unitCost[j] < unitCost[best]) {
                best = j;
            }
        }
        return pattern.on(best);
    }
}
