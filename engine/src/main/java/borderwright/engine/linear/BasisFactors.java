package borderwright.engine.linear;

import java.util.Arrays;

/**
 * A basis in sparse factors: lower times upper, found column by column, and one elementary matrix for every exchange since
 * (product form). The column that pivots on a row takes that row's place in the basis.
 */
final class BasisFactors {
    private static final double TINY = 1e-13;
    private static final double DEPENDENT = 1e-9;

    private final int rows;
    private final int[] pivotRow;
    private final double[] diagonal;
    private final double[] work;
    private final Vectors lower = new Vectors();
    private final Vectors upper = new Vectors();
    private final Vectors exchanges = new Vectors();
    private double[] exchangePivot = new double[64];
    private int[] exchangeRow = new int[64];

    BasisFactors(int rows) {
        this.rows = rows;
        this.pivotRow = new int[rows];
        this.diagonal = new double[rows];
        this.work = new double[rows];
    }

    /** Numbers held; one solution passes over all of them. */
    int numbers() {
        return lower.used + upper.used + exchanges.used + rows;
    }

    /** Whether factoring anew would make solutions faster or safer. */
    boolean isStale() {
        return exchanges.count >= 100 || exchanges.used > 3 * (lower.used + upper.used) + 20 * rows;
    }

    /**
     * Factors a basis.
     *
     * @param store the columns
     * @param basis columns of the basis in any order; on return in the place of their rows, -1 where a column depended on
     *     others and none is left
     */
    void factor(ColumnStore store, int[] basis) {
        lower.clear();
        upper.clear();
        exchanges.clear();
        int[] counts = store.rowCounts(rows, basis);
        int[] old = sparsestFirst(store, basis);
        boolean[] taken = new boolean[rows];
        Arrays.fill(basis, -1);
        int step = 0;
        for (int column : old) {
            if (store.size(column) == 1 && !taken[store.firstRow(column)]) {
                // Nothing so far changes such a column, and it changes none.
                int r = store.firstRow(column);
                diagonal[step] = store.firstEntry(column);
                lower.end();
                upper.end();
                taken[r] = true;
                basis[r] = column;
                pivotRow[step++] = r;
                continue;
            }
            Arrays.fill(work, 0);
            store.addTo(work, column, 1);
            throughLower(work, step);
            int best = pivot(taken, counts);
            if (best < 0) {
                continue;
            }
            keep(best, step, taken);
            taken[best] = true;
            basis[best] = column;
            pivotRow[step++] = best;
        }
        leaveToArtificials(taken, step);
    }

    /** Rows that no column pivots on are left to their artificial columns, which are 1 there. */
    private void leaveToArtificials(boolean[] taken, int from) {
        int step = from;
        for (int r = 0; r < rows; r++) {
            if (!taken[r]) {
                // Such a column is not changed by the factors so far.
                Arrays.fill(work, 0);
                work[r] = 1;
                keep(r, step, taken);
                taken[r] = true;
                pivotRow[step++] = r;
            }
        }
    }

    private static int[] sparsestFirst(ColumnStore store, int[] basis) {
        long[] order = new long[basis.length];
        for (int k = 0; k < order.length; k++) {
            order[k] = ((long) store.size(basis[k]) << 32) | k;
        }
        Arrays.sort(order);
        int[] sorted = new int[order.length];
        for (int k = 0; k < order.length; k++) {
            sorted[k] = basis[(int) order[k]];
        }
        return sorted;
    }

    /** Of the rows with a large entry the one with the fewest columns; -1 when there is no entry. */
    private int pivot(boolean[] taken, int[] counts) {
        double largest = DEPENDENT;
        for (int i = 0; i < rows; i++) {
            if (!taken[i]) {
                largest = Math.max(largest, Math.abs(work[i]));
            }
        }
        int best = -1;
        for (int i = 0; i < rows; i++) {
            if (!taken[i]
                    && Math.abs(work[i]) >= 0.1 * largest
                    && Math.abs(work[i]) > DEPENDENT
                    && (best < 0 || counts[i] < counts[best])) {
                best = i;
            }
        }
        return best;
    }

    private void keep(int best, int step, boolean[] taken) {
        double size = work[best];
        diagonal[step] = size;
        for (int i = 0; i < rows; i++) {
            double v = work[i];
            if (i == best || Math.abs(v) < TINY) {
                continue;
            }
            if (taken[i]) {
                upper.add(i, v);
            } else {
                lower.add(i, v / size);
            }
        }
        lower.end();
        upper.end();
    }

    private void throughLower(double[] x, int steps) {
        for (int t = 0; t < steps; t++) {
            double v = x[pivotRow[t]];
            if (v != 0) {
                lower.addTo(x, t, -v);
            }
        }
    }

    /** Notes that column {@code alpha}, as solved by {@link #solve}, takes the place of the one in row {@code r}. */
    void exchange(int r, double[] alpha) {
        if (exchanges.count == exchangePivot.length) {
            exchangePivot = Arrays.copyOf(exchangePivot, 2 * exchanges.count);
            exchangeRow = Arrays.copyOf(exchangeRow, 2 * exchanges.count);
        }
        exchangePivot[exchanges.count] = alpha[r];
        exchangeRow[exchanges.count] = r;
        for (int i = 0; i < rows; i++) {
            if (i != r && Math.abs(alpha[i]) > TINY) {
                exchanges.add(i, alpha[i]);
            }
        }
        exchanges.end();
    }

    /** x becomes inverse times x. */
    void solve(double[] x) {
        throughLower(x, rows);
        for (int k = rows - 1; k >= 0; k--) {
            double v = x[pivotRow[k]];
            if (v != 0) {
                v /= diagonal[k];
                x[pivotRow[k]] = v;
                upper.addTo(x, k, -v);
            }
        }
        for (int e = 0; e < exchanges.count; e++) {
            double v = x[exchangeRow[e]];
            if (v != 0) {
                v /= exchangePivot[e];
                x[exchangeRow[e]] = v;
                exchanges.addTo(x, e, -v);
            }
        }
    }

    /** y becomes y times inverse. */
    void solveTransposed(double[] y) {
        for (int e = exchanges.count - 1; e >= 0; e--) {
            int r = exchangeRow[e];
            y[r] = (y[r] - exchanges.times(y, e)) / exchangePivot[e];
        }
        for (int k = 0; k < rows; k++) {
            int r = pivotRow[k];
            y[r] = (y[r] - upper.times(y, k)) / diagonal[k];
        }
        for (int t = rows - 1; t >= 0; t--) {
            y[pivotRow[t]] -= lower.times(y, t);
        }
    }

    /** Sparse vectors one after another. */
    private static final class Vectors {
        private int[] index = new int[256];
        private double[] value = new double[256];
        private int[] from = new int[64];
        private int count;
        private int used;

        void clear() {
            count = 0;
            used = 0;
        }

        void add(int i, double v) {
            if (used == index.length) {
                index = Arrays.copyOf(index, 2 * used);
                value = Arrays.copyOf(value, 2 * used);
            }
            index[used] = i;
            value[used++] = v;
        }

        void end() {
            if (count + 2 > from.length) {
                from = Arrays.copyOf(from, 2 * from.length);
            }
            from[++count] = used;
        }

        void addTo(double[] x, int vector, double times) {
            for (int k = from[vector]; k < from[vector + 1]; k++) {
                x[index[k]] += value[k] * times;
            }
        }

        double times(double[] x, int vector) {
            double sum = 0;
            for (int k = from[vector]; k < from[vector + 1]; k++) {
                sum += value[k] * x[index[k]];
            }
            return sum;
        }
    }
}
