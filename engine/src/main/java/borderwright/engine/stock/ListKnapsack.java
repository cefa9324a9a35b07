package borderwright.engine.stock;

import borderwright.engine.effort.Budget;
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
    /** Each filling that was made: the one it came from, the size put to it and how often. */
    private int[] before = new int[1024];

    private int[] item = new int[1024];
    private int[] count = new int[1024];
    private int states;
    /** The list, shortest first; length and worth lie side by side, for the list is passed over once for every size. */
    private Front list = new Front();

    private Front next = new Front();
    private boolean exact = true;

    ListKnapsack(long[] size, long capacity) {
        this.size = size.clone();
        this.capacity = capacity;
    }

    private static final class Front {
        private long[] weight = new long[1024];
        private long[] worth = new long[1024];
        private int[] state = new int[1024];
        private int length;

        void clear(int most) {
            length = 0;
            if (most > weight.length) {
                weight = new long[2 * most];
                worth = new long[2 * most];
                state = new int[2 * most];
            }
        }

        void add(long w, long v, int s) {
            weight[length] = w;
            worth[length] = v;
            state[length++] = s;
        }
    }

    @Override
    public void solve(long[] value, int[] limit, Budget budget) {
        states = 0;
        exact = true;
        list.clear(1);
        list.add(0, 0, state(-1, -1, 0));
        for (int i = 0; i < size.length; i++) {
            int left = value[i] <= 0 ? 0 : (int) Math.min(limit[i], capacity / size[i]);
            for (int part = 1; left > 0 && exact; part *= 2) {
                int n = Math.min(part, left);
                exact = budget.spend(2L * list.length) && merge(i, n, value[i] * n);
                left -= n;
            }
        }
    }

    private int state(int from, int of, int n) {
        if (states == before.length) {
            int more = 2 * states;
            before = Arrays.copyOf(before, more);
            item = Arrays.copyOf(item, more);
            count = Arrays.copyOf(count, more);
        }
        before[states] = from;
        item[states] = of;
        count[states] = n;
        return states++;
    }

    /** Every filling with and without {@code n} more pieces of a size, those that another one beats left out; whether it fits. */
    private boolean merge(int of, int n, long more) {
        Front old = list;
        if (states + old.length > MOST) {
            return false;
        }
        next.clear(2 * old.length);
        long longer = size[of] * n;
        int without = 0;
        int with = 0;
        long last = -1;
        while (true) {
            long plain = without < old.length ? old.weight[without] : Long.MAX_VALUE;
            long added = with < old.length ? old.weight[with] + longer : Long.MAX_VALUE;
            if (added > capacity && plain == Long.MAX_VALUE) {
                break;
            }
            if (added > capacity || plain <= added) {
                long v = old.worth[without];
                if (v > last) {
                    last = v;
                    next.add(plain, v, old.state[without]);
                }
                without++;
            } else {
                long v = old.worth[with] + more;
                if (v > last) {
                    last = v;
                    next.add(added, v, state(old.state[with], of, n));
                }
                with++;
            }
        }
        list = next;
        next = old;
        return true;
    }

    private int find(long length) {
        int low = 0;
        int high = list.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (list.weight[middle] <= length) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    @Override
    public long best(long length) {
        return list.worth[find(length)];
    }

    @Override
    public long bestLength(long length, LongUnaryOperator charge) {
        long at = 0;
        long most = -charge.applyAsLong(0);
        for (int f = 0; f < list.length && list.weight[f] <= length; f++) {
            long left = list.worth[f] - charge.applyAsLong(list.weight[f]);
            if (left > most) {
                at = list.weight[f];
                most = left;
            }
        }
        return at;
    }

    @Override
    public void counts(long length, int[] counts) {
        Arrays.fill(counts, 0);
        for (int s = list.state[find(length)]; item[s] >= 0; s = before[s]) {
            counts[item[s]] += count[s];
        }
    }

    @Override
    public boolean isExact() {
        return exact;
    }
}
