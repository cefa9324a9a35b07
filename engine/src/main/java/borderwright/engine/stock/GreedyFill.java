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
    /** From each size on the first of which pieces are left, or a size before that. */
    private final int[] next;

    private final int[] boardsLeft;
    private final double[] unitCost;
    /** The filling last tried: sizes, pieces of each, and how many sizes. */
    private final int[] item;

    private final int[] count;
    private int kinds;

    private GreedyFill(StockCase stock) {
        this.stock = stock;
        this.left = stock.copyOfDemand();
        this.boardsLeft = stock.copyOfAvailable();
        this.unitCost = new double[stock.boards()];
        this.next = new int[left.length + 1];
        Arrays.setAll(next, i -> i);
        this.item = new int[left.length];
        this.count = new int[left.length];
        for (int j = 0; j < unitCost.length; j++) {
            unitCost[j] = stock.cost(j) / (double) stock.pack(j);
            boardsLeft[j] = stock.isLimited(j) ? boardsLeft[j] / stock.pack(j) * stock.pack(j) : StockCase.UNLIMITED;
        }
    }

    /** A packing that serves every demand, or null when this heuristic finds none. */
    @Nullable
    public static Packing pack(StockCase stock) {
        return new GreedyFill(stock).run();
    }

    @Nullable
    private Packing run() {
        Packing packing = new Packing();
        int first = 0;
        while (true) {
            first = nextLeft(first);
            if (first == left.length) {
                return packing;
            }
            CuttingPattern best = bestFor(first);
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
    private CuttingPattern bestFor(int first) {
        double bestRate = Double.POSITIVE_INFINITY;
        double bestFill = 0;
        CuttingPattern bestPattern = null;
        for (int j = 0; j < unitCost.length; j++) {
            if (boardsLeft[j] <= 0 || stock.capacity(j) < stock.size(first)) {
                continue;
            }
            long used = fill(j, first);
            double rate = (unitCost[j] + stock.use(j, used)) / used;
            double filled = used / (double) stock.capacity(j);
            if (rate < bestRate || (rate == bestRate && filled > bestFill)) {
                bestRate = rate;
                bestFill = filled;
                bestPattern = new CuttingPattern(j, Arrays.copyOf(item, kinds), Arrays.copyOf(count, kinds));
            }
        }
        return bestPattern == null ? null : cheapest(bestPattern);
    }

    private long fill(int j, int first) {
        kinds = 0;
        long room = stock.capacity(j);
        int i = first;
        while (i < left.length) {
            if (stock.size(i) <= room) {
                item[kinds] = i;
                count[kinds] = (int) Math.min(left[i], room / stock.size(i));
                room -= count[kinds++] * stock.size(i);
            }
            i = nextLeft(Math.max(i + 1, firstWithin(room)));
        }
        return stock.capacity(j) - room;
    }

    /** The first size from {@code from} on of which pieces are left. */
    private int nextLeft(int from) {
        int i = from;
        while (i < left.length && left[i] == 0) {
            next[i] = next[Math.max(i + 1, next[i])];
            i = Math.max(i + 1, next[i]);
        }
        return i;
    }

    /** The first size that is no longer than a room; sizes fall. */
    private int firstWithin(long room) {
        int low = 0;
        int high = left.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (stock.size(middle) <= room) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** The pattern on the cheapest board that still takes all of it. */
    private CuttingPattern cheapest(CuttingPattern pattern) {
        long used = pattern.used(stock);
        int best = pattern.board();
        for (int j = 0; j < unitCost.length; j++) {
            if (boardsLeft[j] > 0 && stock.capacity(j) >= used && costFor(j, used) < costFor(best, used)) {
                best = j;
            }
        }
        return pattern.on(best);
    }

    private double costFor(int j, long used) {
        return unitCost[j] + stock.use(j, used);
    }
}
