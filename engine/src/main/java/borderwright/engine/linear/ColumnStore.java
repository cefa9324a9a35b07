package borderwright.engine.linear;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Sparse columns of a linear program with their costs and bounds. Columns are never taken away, but may be put to sleep:
 * they stay at 0 and are passed over until they are woken.
 */
final class ColumnStore {
    private int columns;
    /** Where each column's entries start in {@link #row} and {@link #entry}; one more than there are columns. */
    private int[] from = new int[65];

    private int[] row = new int[256];
    private double[] entry = new double[256];
    private double[] cost = new double[64];
    private double[] lower = new double[64];
    private double[] upper = new double[64];
    private int[] awake = new int[64];
    private boolean[] asleep = new boolean[64];
    private int awakes;

    /** Adds a column with lower bound 0; its number. */
    int add(double columnCost, int[] rows, double[] entries, double columnUpper) {
        if (columns == cost.length) {
            int size = 2 * columns;
            from = Arrays.copyOf(from, size + 1);
            cost = Arrays.copyOf(cost, size);
            lower = Arrays.copyOf(lower, size);
            upper = Arrays.copyOf(upper, size);
            awake = Arrays.copyOf(awake, size);
            asleep = Arrays.copyOf(asleep, size);
        }
        int at = from[columns];
        if (at + rows.length > row.length) {
            row = Arrays.copyOf(row, 2 * (at + rows.length));
            entry = Arrays.copyOf(entry, row.length);
        }
        System.arraycopy(rows, 0, row, at, rows.length);
        System.arraycopy(entries, 0, entry, at, rows.length);
        from[columns + 1] = at + rows.length;
        cost[columns] = columnCost;
        upper[columns] = columnUpper;
        awake[awakes++] = columns;
        return columns++;
    }

    int columns() {
        return columns;
    }

    /** Number of columns that are awake. */
    int awakes() {
        return awakes;
    }

    /** The k-th column that is awake. */
    int awake(int k) {
        return awake[k];
    }

    /** Puts columns to sleep; they must be at 0 and in no basis. */
    void sleep(IntPredicate which) {
        int kept = 0;
        for (int k = 0; k < awakes; k++) {
            int column = awake[k];
            asleep[column] = which.test(column);
            if (!asleep[column]) {
                awake[kept++] = column;
            }
        }
        awakes = kept;
    }

    /** The columns that are awake, to come back to. */
    int[] copyOfAwake() {
        return Arrays.copyOf(awake, awakes);
    }

    /** Puts to sleep what was not awake once, but for columns added since, and wakes what was. */
    void wakeOnly(int[] once, int columnsThen) {
        int[] since = IntStream.range(0, awakes)
                .map(k -> awake[k])
                .filter(j -> j >= columnsThen)
                .toArray();
        Arrays.fill(asleep, 0, columns, true);
        awakes = 0;
        for (int j : once) {
            wake(j);
        }
        for (int j : since) {
            wake(j);
        }
    }

    /** Whether a column stands for more of a row than a limit. */
    boolean exceeds(int column, double[] limit) {
        for (int k = from[column]; k < from[column + 1]; k++) {
            if (entry[k] > limit[row[k]]) {
                return true;
            }
        }
        return false;
    }

    /** Wakes a column; whether it slept. */
    boolean wake(int column) {
        boolean slept = asleep[column];
        if (slept) {
            asleep[column] = false;
            awake[awakes++] = column;
        }
        return slept;
    }

    /** Entries of a column that are not zero. */
    int size(int column) {
        return from[column + 1] - from[column];
    }

    /** Row of a column's first entry. */
    int firstRow(int column) {
        return row[from[column]];
    }

    double firstEntry(int column) {
        return entry[from[column]];
    }

    double cost(int column) {
        return cost[column];
    }

    double lower(int column) {
        return lower[column];
    }

    double upper(int column) {
        return upper[column];
    }

    boolean isFixed(int column) {
        return lower[column] == upper[column];
    }

    void bound(int column, double newLower, double newUpper) {
        lower[column] = newLower;
        upper[column] = newUpper;
    }

    /** Sum of the column's entries times a vector. */
    double times(double[] vector, int column) {
        double sum = 0;
        int end = from[column + 1];
        for (int k = from[column]; k < end; k++) {
            sum += vector[row[k]] * entry[k];
        }
        return sum;
    }

    /** Adds so many times the column to a vector. */
    void addTo(double[] vector, int column, double times) {
        int end = from[column + 1];
        for (int k = from[column]; k < end; k++) {
            vector[row[k]] += entry[k] * times;
        }
    }

    /** Counts in every row the columns of a basis that have an entry there. */
    int[] rowCounts(int rows, int[] basis) {
        int[] counts = new int[rows];
        for (int column : basis) {
            for (int k = from[column]; k < from[column + 1]; k++) {
                counts[row[k]]++;
            }
        }
        return counts;
    }
}
