package borderwright.engine.stock;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * A first packing that leaves little waste: board by board, the longest piece left and with it the pieces that fill the
 * board best, found exactly by a table of reachable lengths (after the minimum bin slack rule of Gupta and Ho 1999, from
 * memory). Only for one type of board without limit.
 */
public final class SubsetFill {
    /** Table words that all boards together may take. */
    private static final double MOST_WORDS = 60_000_000;

    private final StockCase stock;
    private final SplittableRandom random;
    private final boolean strays;
    private final int[] left;
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
        this.words = (int) (stock.capacity(0) >> 6) + 1;
    }

    /** Whether this rule suits the case and its tables are small. */
    public static boolean suits(StockCase stock) {
        if (stock.boards() != 1 || stock.isPacked(0) || stock.available(0) < stock.pieces()) {
            return false;
        }
        double boards = MaterialBound.of(stock) / (double) Math.max(1, stock.cost(0));
        double kinds = Math.min(stock.sizes(), Math.min(boards, 64) + 3.0 * stock.sizes() / 4);
        return boards * kinds * ((stock.capacity(0) >> 6) + 1) <= MOST_WORDS
                && stock.capacity(0) <= PieceTable.MOST_PLAIN;
    }

    /**
     * A packing of a case that {@link #suits}.
     *
     * @param seed 0 for the longest piece first always; others stray from it
     * @param mostBoards give up beyond this number of boards
     * @return a packing, or null when it would need more boards
     */
    @Nullable
    public static Packing pack(StockCase stock, long seed, long mostBoards, Budget budget) {
        return new SubsetFill(stock, seed).run(mostBoards, budget);
    }

    @Nullable
    private Packing run(long mostBoards, Budget budget) {
        Packing packing = new Packing();
        long boards = 0;
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
            int[] counts = fill(first);
            int times = Integer.MAX_VALUE;
            for (int i = 0; i < counts.length; i++) {
                times = counts[i] > 0 ? Math.min(times, left[i] / counts[i]) : times;
            }
            for (int i = 0; i < counts.length; i++) {
                left[i] -= counts[i] * times;
            }
            boards += times;
            if (boards > mostBoards) {
                return null;
            }
            packing.add(Pattern.ofCounts(0, counts), times);
        }
    }

    /** The longest piece and the best filling of what is left of a board. */
    private int[] fill(int first) {
        int[] counts = new int[left.length];
        counts[first] = 1;
        int room = (int) (stock.capacity(0) - stock.size(first));
        rows = 0;
        long[] before = new long[words];
        before[0] = 1;
        for (int i = first; i < left.length; i++) {
            int most = (int) Math.min(left[i] - (i == first ? 1 : 0), room / stock.size(i));
            if (most <= 0 || (strays && random.nextInt(6) == 0)) {
                continue;
            }
            for (int part = 1; most > 0; part *= 2) {
                int n = Math.min(part, most);
                before = row(i, n, before, room);
                most -= n;
            }
            if (isReached(before, room)) {
                break;
            }
        }
        int at = best(before, room);
        for (int r = rows - 1; r >= 0 && at > 0; r--) {
            long[] without = r == 0 ? null : reached[r - 1];
            boolean had = without == null ? at == 0 : isReached(without, at);
            if (!had) {
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
