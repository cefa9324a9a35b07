package borderwright.engine.stock;

import java.util.Arrays;

/** Pieces that are cut from one board: how many of which size. Only sizes that occur are held. */
public final class CuttingPattern {
    private final int board;
    private final int[] item;
    private final int[] count;

    /**
     * @param board index of the board's type
     * @param item indices of sizes, rising
     * @param count pieces of each, at least 1
     */
    public CuttingPattern(int board, int[] item, int[] count) {
        this.board = board;
        this.item = item;
        this.count = count;
    }

    /** A pattern from counts of all sizes, {@code counts[0]} for the first. */
    public static CuttingPattern ofCounts(int board, int[] counts) {
        int n = 0;
        for (int c : counts) {
            n += c > 0 ? 1 : 0;
        }
        int[] item = new int[n];
        int[] count = new int[n];
        n = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                item[n] = i;
                count[n++] = counts[i];
            }
        }
        return new CuttingPattern(board, item, count);
    }

    public int board() {
        return board;
    }

    /** Number of different sizes. */
    public int kinds() {
        return item.length;
    }

    public int item(int k) {
        return item[k];
    }

    public int count(int k) {
        return count[k];
    }

    /** One less of the last size that occurs. */
    public CuttingPattern withoutLast() {
        int n = item.length - (count[item.length - 1] == 1 ? 1 : 0);
        int[] fewer = Arrays.copyOf(count, n);
        if (n == count.length) {
            fewer[n - 1]--;
        }
        return new CuttingPattern(board, Arrays.copyOf(item, n), fewer);
    }

    public long used(StockCase stock) {
        long used = 0;
        for (int k = 0; k < item.length; k++) {
            used += count[k] * stock.size(item[k]);
        }
        return used;
    }

    /** The same pieces on another type of board. */
    public CuttingPattern on(int otherBoard) {
        return otherBoard == board ? this : new CuttingPattern(otherBoard, item, count);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof CuttingPattern p
                && p.board == board
                && Arrays.equals(p.item, item)
                && Arrays.equals(p.count, count);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(item) + Arrays.hashCode(count)) + board;
    }

    @Override
    public String toString() {
        return "board " + board + " items " + Arrays.toString(item) + " counts " + Arrays.toString(count);
    }
}
