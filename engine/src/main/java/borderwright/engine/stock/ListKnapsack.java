package borderwright.engine.stock;

import java.util.Arrays;
import java.util.function.LongUnaryOperator;

/**
 * The most valuable pieces for boards whose length is too great for a plain table: the list of all fillings of which none
 * is both shorter and worth more (Nemhauser and Ullmann 1969, from memory).
 */
public final class ListKnapsack implements PieceTable {
    /** Fillings kept before the list is cut off. */
    private static final int MOST = 3_000_000;

    private final long[] size;
    private final long capacity;
    private long[] weight = new long[1024];
    private long[] worth = new long[1024];
    private int[] before = new int[1024];
    private int[] item = new int[1024];
    private int[] count = new int[1024];
    private int states;
    private int[] front = new int[1024];
    private int fronts;
    private boolean exact = true;

    ListKnapsack(long[] size, long capacity) {
        this.size = size.clone();
        this.capacity = capacity;
    }

    @Override
    public void solve(long[] value, int[] limit, Budget budget) {
        states = 0;
        fronts = 1;
        exact = true;
        front[0] = state(0, 0, -1, -1, 0);
        for (int i = 0; i < size.length; i++) {
            int left = value[i] <= 0 ? 0 : (int) Math.min(limit[i], capacity / size[i]);
            for (int part = 1; left > 0 && exact; part *= 2) {
                int n = Math.min(part, left);
                exact = budget.spend(2L * fronts) && merge(i, n, value[i] * n);
                left -= n;
            }
        }
    }

    private int state(long w, long v, int from, int of, int n) {
        if (states == weight.length) {
            int more = 2 * states;
            weight = Arrays.copyOf(weight, more);
            worth = Arrays.copyOf(worth, more);
            before = Arrays.copyOf(before, more);
            item = Arrays.copyOf(item, more);
            count = Arrays.copyOf(count, more);
        }
        weight[states] = w;
        worth[states] = v;
        before[states] = from;
        item[states] = of;
        count[states] = n;
        return states++;
    }

    /** Every filling with and without {@code n} more pieces of a size, those that another one beats left out; whether it fits. */
    private boolean merge(int of, int n, long more) {
        if (states + fronts > MOST) {
            return false;
        }
        long longer = size[of] * n;
        int[] merged = new int[2 * fronts];
        int at = 0;
        int without = 0;
        int with = 0;
        long last = -1;
        while (without < fronts || (with < fronts && weight[front[with]] + longer <= capacity)) {
            boolean canAdd = with < fronts && weight[front[with]] + longer <= capacity;
            long plain = without < fronts ? weight[front[without]] : Long.MAX_VALUE;
            if (!canAdd || plain <= weight[front[with]] + longer) {
                int s = front[without++];
                if (worth[s] > last) {
                    last = worth[s];
                    merged[at++] = s;
                }
            } else {
                int s = front[with++];
                if (worth[s] + more > last) {
                    last = worth[s] + more;
                    merged[at++] = state(weight[s] + longer, last, s, of, n);
                }
            }
        }
        front = merged;
        fronts = at;
        return true;
    }

    private int find(long length) {
        int low = 0;
        int high = fronts - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (weight[front[middle]] <= length) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return front[low];
    }

    @Override
    public long best(long length) {
        return worth[find(length)];
    }

    @Override
    public long bestLength(long length, LongUnaryOperator charge) {
        long at = 0;
        long most = -charge.applyAsLong(0);
        for (int f = 0; f < fronts && weight[front[f]] <= length; f++) {
            long left = worth[front[f]] - charge.applyAsLong(weight[front[f]]);
            if (left > most) {
                at = weight[front[f]];
                most = left;
            }
        }
        return at;
    }

    @Override
    public void counts(long length, int[] counts) {
        Arrays.fill(counts, 0);
        for (int s = find(length); item[s] >= 0; s = before[s]) {
            counts[item[s]] += count[s];
        }
    }

    @Override
    public boolean isExact() {
        return exact;
    }
}
