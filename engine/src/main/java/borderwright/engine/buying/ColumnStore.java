package borderwright.engine.buying;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Sparse columns of a linear program with their costs and bounds. Columns are never taken away, but may be put to sleep:
 * they stay at 0 and are passed over until they are woken.
 */
final class ColumnStore {
    private int columns;
    private int[][] row = new int[64][];
    private double[][] entry = new double[64][];
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
            row = Arrays.copyOf(row, size);
            entry = Arrays.copyOf(entry, size);
            cost = Arrays.copyOf(cost, size);
            lower = Arrays.copyOf(lower, size);
            upper = Arrays.copyOf(upper, size);
            awake = Arrays.copyOf(awake, size);
            asleep = Arrays.copyOf(asleep, size);
        }
        row[columns] = rows;
        entry[columns] = entries;
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
        return row[column].length;
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
        int[] rows = row[column];
        double[] entries = entry[column];
        double sum = 0;
        for (int k = 0; k < rows.length; k++) {
            sum += vector[rows[k]] * entries[k];
        }
        return sum;
    }

    /** Adds so many times the column to a vector. */
    void addTo(double[] vector, int column, double times) {
        int[] rows = row[column];
        double[] entries = entry[column];
        for (int k = 0; k < rows.length; k++) {
            vector[rows[k]] += entries[k] * times;
        }
    }

    /** Counts in every row the columns of a basis that have an entry there. */
    int[] rowCounts(int rows, int[] basis) {
        int[] counts = new int[rows];
        for (int column : basis) {
            for (int r : row[column]) {
                counts[r]++;
            }
        }
        return counts;
    }
}
