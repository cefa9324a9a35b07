package borderwright.engine.stock;

import borderwright.engine.effort.Budget;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * A first packing that leaves little waste: board by board, the longest piece left and with it the pieces that fill the
 * board best, found exactly by a table of reachable lengths (after the minimum bin slack rule of Gupta and Ho 1999, from
 * memory). Of several boards the one whose filled length costs least is taken. Not for boards in packs.
 */
public final class SubsetFill {
    /** Table words that all boards together may take. */
    private static final double MOST_WORDS = 60_000_000;

    private static final double QUICK_WORDS = 100_000;
    private static final double CHEAP_WORDS = 6e6;

    private final StockCase stock;
    private final SplittableRandom random;
    private final boolean strays;
    private final int[] left;
    private final int[] boardsLeft;
    private final int longest;
    private final int words;
    private long[][] reached = new long[0][];
    private int[] rowItem = new int[0];
    private int[] rowCount = new int[0];
    private int rows;

    private SubsetFill(StockCase stock, long seed) {
        this.stock = stock;
        this.random = new SplittableRandom(seed);
        this.strays = seed != 0;
        this.left = stock.copyOfDemand();
        this.boardsLeft = stock.copyOfAvailable();
        this.longest = (int) stock.longest();
        this.words = (longest >> 6) + 1;
    }

    /** Whether this rule suits the case and its tables are small. */
    public static boolean suits(StockCase stock) {
        return words(stock) <= MOST_WORDS;
    }

    /** Whether this rule suits the case and takes next to no time. */
    public static boolean isQuick(StockCase stock) {
        return words(stock) <= QUICK_WORDS;
    }

    /** Whether this rule suits the case and takes little against a linear programme of its sizes. */
    public static boolean isCheap(StockCase stock) {
        return words(stock) <= CHEAP_WORDS;
    }

    /** Words of tables that a packing fills; more than can be counted where the rule does not suit. */
    private static double words(StockCase stock) {
        double boards = 1;
        for (int i = 0; i < stock.sizes(); i++) {
            boards += (double) stock.size(i) * stock.demand(i) / Math.max(1, stock.longest());
        }
        for (int j = 0; j < stock.boards(); j++) {
            if (stock.isPacked(j)) {
                return Double.POSITIVE_INFINITY;
            }
        }
        if (stock.longest() > PieceTable.MOST_PLAIN) {
            return Double.POSITIVE_INFINITY;
        }
        double kinds = Math.min(stock.sizes(), Math.min(boards, 64) + 3.0 * stock.sizes() / 4);
        return boards * kinds * ((stock.longest() >> 6) + 1);
    }

    /**
     * A packing of a case that {@link #suits}.
     *
     * @param seed 0 for the longest piece first always; others stray from it
     * @param mostCost give up beyond this cost
     * @return a packing, or null when it would cost more or the boards are too few
     */
    @Nullable
    public static Packing pack(StockCase stock, long seed, long mostCost, Budget budget) {
        return new SubsetFill(stock, seed).run(mostCost, budget);
    }

    @Nullable
    private Packing run(long mostCost, Budget budget) {
        Packing packing = new Packing();
        double cost = 0;
        int first = 0;
        while (true) {
            while (first < left.length && left[first] == 0) {
                first++;
            }
            if (first == left.length) {
                return packing;
            }
            if (!budget.spend((long) rows * words + left.length)) {
                return null;
            }
            long[] lengths = reach(first);
            int board = bestBoard(first, lengths);
            if (board < 0) {
                return null;
            }
            int[] counts = counts(first, board, lengths);
            int times = boardsLeft[board];
            for (int i = 0; i < counts.length; i++) {
                times = counts[i] > 0 ? Math.min(times, left[i] / counts[i]) : times;
            }
            for (int i = 0; i < counts.length; i++) {
                left[i] -= counts[i] * times;
            }
            boardsLeft[board] -= boardsLeft[board] == StockCase.UNLIMITED ? 0 : times;
            cost += (double) times
                    * (stock.cost(board)
                            + stock.use(
                                    board,
                                    CuttingPattern.ofCounts(board, counts).used(stock)));
            if (cost > mostCost) {
                return null;
            }
            packing.add(CuttingPattern.ofCounts(board, counts), times);
        }
    }

    /** The lengths that pieces left can add up to beside the longest of them. */
    private long[] reach(int first) {
        int room = (int) (longest - stock.size(first));
        rows = 0;
        long[] lengths = new long[words];
        lengths[0] = 1;
        for (int i = first; i < left.length && room >= 0 && !isReached(lengths, room); i++) {
            int most = (int) Math.min(left[i] - (i == first ? 1 : 0), room / stock.size(i));
            if (most <= 0 || (strays && random.nextInt(6) == 0)) {
                continue;
            }
            for (int part = 1; most > 0; part *= 2) {
                int n = Math.min(part, most);
                lengths = row(i, n, lengths, room);
                most -= n;
            }
        }
        return lengths;
    }

    /** The board that takes the longest piece and costs least for the length filled; -1 when there is none. */
    private int bestBoard(int first, long[] lengths) {
        int best = -1;
        double bestRate = Double.POSITIVE_INFINITY;
        double bestFilled = 0;
        for (int j = 0; j < boardsLeft.length; j++) {
            if (boardsLeft[j] > 0 && stock.capacity(j) >= stock.size(first)) {
                double filled =
                        stock.size(first) + (double) best(lengths, (int) (stock.capacity(j) - stock.size(first)));
                double rate = (stock.cost(j) + stock.use(j, (long) filled)) / filled;
                if (rate < bestRate || (rate == bestRate && filled > bestFilled)) {
                    best = j;
                    bestRate = rate;
                    bestFilled = filled;
                }
            }
        }
        return best;
    }

    /** The pieces behind the best filling of a board. */
    private int[] counts(int first, int board, long[] lengths) {
        int[] counts = new int[left.length];
        counts[first] = 1;
        int at = best(lengths, (int) (stock.capacity(board) - stock.size(first)));
        for (int r = rows - 1; r >= 0 && at > 0; r--) {
            boolean without = r > 0 && isReached(reached[r - 1], at);
            if (!without) {
                counts[rowItem[r]] += rowCount[r];
                at -= (int) stock.size(rowItem[r]) * rowCount[r];
            }
        }
        return counts;
    }

    private long[] row(int item, int count, long[] before, int room) {
        if (rows == reached.length) {
            int size = Math.max(64, 2 * rows);
            reached = Arrays.copyOf(reached, size);
            rowItem = Arrays.copyOf(rowItem, size);
            rowCount = Arrays.copyOf(rowCount, size);
        }
        if (reached[rows] == null) {
            reached[rows] = new long[words];
        }
        long[] after = reached[rows];
        long shift = stock.size(item) * count;
        int jump = (int) (shift >> 6);
        int bits = (int) (shift & 63);
        int last = Math.min(words - 1, room >> 6);
        for (int w = 0; w <= last; w++) {
            long moved = w < jump ? 0 : before[w - jump] << bits;
            if (bits > 0 && w > jump) {
                moved |= before[w - jump - 1] >>> (64 - bits);
            }
            after[w] = before[w] | moved;
        }
        rowItem[rows] = item;
        rowCount[rows] = count;
        rows++;
        return after;
    }

    private static boolean isReached(long[] bits, int at) {
        return (bits[at >> 6] & 1L << at) != 0;
    }

    private static int best(long[] bits, int room) {
        int at = room;
        while (!isReached(bits, at)) {
            at--;
        }
        return at;
    }
}
