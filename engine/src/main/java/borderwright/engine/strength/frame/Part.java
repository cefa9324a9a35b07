package borderwright.engine.strength.frame;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;

/** What one member or spring adds to the upper triangle of the stiffness matrix: values and where they go. */
final class Part {
    private final int[] rows;
    private final int[] columns;
    private final double[] values;

    /** Index of each value in the matrix's array of values, filled once the pattern is known. */
    private final int[] at;

    private Part(int[] rows, int[] columns, double[] values) {
        this.rows = rows;
        this.columns = columns;
        this.values = values;
        at = new int[values.length];
    }

    /** The free part of a square matrix {@code k} over the equations given; -1 marks a held displacement. */
    static Part of(double[] k, int[] equations) {
        int size = equations.length;
        int most = size * (size + 1) / 2;
        int[] rows = new int[most];
        int[] columns = new int[most];
        double[] values = new double[most];
        int n = 0;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                boolean upper = equations[i] >= 0 && equations[j] >= equations[i];
                if (upper && k[size * i + j] != 0) {
                    rows[n] = equations[i];
                    columns[n] = equations[j];
                    values[n++] = k[size * i + j];
                }
            }
        }
        return new Part(Arrays.copyOf(rows, n), Arrays.copyOf(columns, n), Arrays.copyOf(values, n));
    }

    int size() {
        return values.length;
    }

    int row(int k) {
        return rows[k];
    }

    int column(int k) {
        return columns[k];
    }

    void locate(DMatrixSparseCSC matrix) {
        for (int k = 0; k < values.length; k++) {
            at[k] = matrix.nz_index(rows[k], columns[k]);
        }
    }

    void addTo(double[] matrixValues, double scale) {
        for (int k = 0; k < values.length; k++) {
            matrixValues[at[k]] += scale * values[k];
        }
    }

    /** Adds this part times a vector to {@code out}. */
    void multiply(double scale, double[] in, double[] out) {
        for (int k = 0; k < values.length; k++) {
            double value = scale * values[k];
            out[rows[k]] += value * in[columns[k]];
            if (rows[k] != columns[k]) {
                out[columns[k]] += value * in[rows[k]];
            }
        }
    }
}
