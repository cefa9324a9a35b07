package borderwright.engine.stock;

import borderwright.engine.effort.Budget;
import java.util.Arrays;
import java.util.function.LongUnaryOperator;

/**
 * The most valuable pieces for every length of board at once: an exact table over whole lengths, with a limit on the
 * number of pieces of each size.
 *
 * <p>One table serves all boards of a section, since the best for a shorter board is an earlier entry. A size whose limit
 * can bind is split into 1, 2, 4, ... pieces and a rest (binary splitting).
 */
public final class Knapsack implements PieceTable {
    private final int[] size;
    private final int capacity;
    private final long[] best;
    private int[] rowItem = new int[64];
    private int[] rowCount = new int[64];
    private long[][] taken = new long[64][];
    private int rows;
    private boolean exact = true;

    /**
     * A table for sizes and boards.
     *
     * @param size sizes, each at least 1
     * @param capacity longest board
     */
    Knapsack(long[] size, int capacity) {
        this.size = new int[size.length];
        Arrays.setAll(this.size, i -> (int) Math.min(size[i], Integer.MAX_VALUE));
        this.capacity = capacity;
        this.best = new long[capacity + 1];
    }

    @Override
    public void solve(long[] value, int[] limit, Budget budget) {
        Arrays.fill(best, 0);
        rows = 0;
        exact = budget.spend(capacity);
        for (int i = 0; i < size.length && exact; i++) {
            if (value[i] <= 0 || size[i] > capacity || limit[i] <= 0) {
                continue;
            }
            int most = capacity / size[i];
            if (limit[i] >= most && most > 1) {
                freely(i, value[i]);
                exact = budget.spend(capacity - size[i]);
            } else {
                int left = Math.min(limit[i], most);
                for (int part = 1; left > 0 && exact; part *= 2) {
                    int n = Math.min(part, left);
                    once(i, n, value[i]);
                    exact = budget.spend(capacity - (long) size[i] * n);
                    left -= n;
                }
            }
        }
    }

    private long[] row(int item, int count) {
        if (rows == taken.length) {
            rowItem = Arrays.copyOf(rowItem, 2 * rows);
            rowCount = Arrays.copyOf(rowCount, 2 * rows);
            taken = Arrays.copyOf(taken, 2 * rows);
        }
        if (taken[rows] == null) {
            taken[rows] = new long[(capacity >> 6) + 1];
        } else {
            Arrays.fill(taken[rows], 0);
        }
        rowItem[rows] = item;
        rowCount[rows] = count;
        return taken[rows++];
    }

    private void once(int item, int count, long value) {
        long[] bits = row(item, count);
        int weight = size[item] * count;
        long worth = value * count;
        for (int c = capacity; c >= weight; c--) {
            long with = best[c - weight] + worth;
            if (with > best[c]) {
                best[c] = with;
                bits[c >> 6] |= 1L << c;
            }
        }
    }

    /** As often as it fits; marked by a count of 0. */
    private void freely(int item, long value) {
        long[] bits = row(item, 0);
        int weight = size[item];
        for (int c = weight; c <= capacity; c++) {
            long with = best[c - weight] + value;
            if (with > best[c]) {
                best[c] = with;
                bits[c >> 6] |= 1L << c;
            }
        }
    }

    @Override
    public boolean isExact() {
        return exact;
    }

    @Override
    public long best(long length) {
        return best[(int) length];
    }

    @Override
    public long bestLength(long length, LongUnaryOperator charge) {
        int at = 0;
        long most = best[0] - charge.applyAsLong(0);
        for (int c = 1; c <= length; c++) {
            if (best[c] > best[c - 1] && best[c] - charge.applyAsLong(c) > most) {
                at = c;
                most = best[c] - charge.applyAsLong(c);
            }
        }
        return at;
    }

    @Override
    public void counts(long length, int[] counts) {
        Arrays.fill(counts, 0);
        int c = (int) length;
        for (int r = rows - 1; r >= 0; r--) {
            int item = rowItem[r];
            while ((taken[r][c >> 6] & 1L << c) != 0) {
                counts[item] += Math.max(1, rowCount[r]);
                c -= size[item] * Math.max(1, rowCount[r]);
                if (rowCount[r] > 0) {
                    break;
                }
            }
        }
    }
}
