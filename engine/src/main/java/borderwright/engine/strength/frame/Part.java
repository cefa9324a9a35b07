package borderwright.engine.strength.frame;

import borderwright.engine.strength.frame.Fronts.Front;
import java.util.Arrays;

/** What one member or spring adds to one triangle of the stiffness matrix: values and where they go. */
final class Part {
    private final int[] rows;
    private final int[] columns;
    private final double[] values;

    /** The front that takes it whole; -1 where it adds nothing. */
    private final int front;

    /** Index of each value in that front's array of values. */
    private final int[] at;

    private Part(int[] rows, int[] columns, double[] values, Fronts fronts) {
        this.rows = rows;
        this.columns = columns;
        this.values = values;
        at = new int[values.length];
        int first = Arrays.stream(rows).min().orElse(-1);
        front = first < 0 ? -1 : fronts.ownerOf(first);
        for (int k = 0; k < values.length; k++) {
            Front takes = fronts.get(front);
            at[k] = takes.at(rows[k], columns[k]);
        }
    }

    /** The free part of a square matrix {@code k} over the equations given; -1 marks a held displacement. */
    static Part of(double[] k, int[] equations, Fronts fronts) {
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
        return new Part(Arrays.copyOf(rows, n), Arrays.copyOf(columns, n), Arrays.copyOf(values, n), fronts);
    }

    int front() {
        return front;
    }

    void addTo(double[] frontValues, double scale) {
        for (int k = 0; k < values.length; k++) {
            frontValues[at[k]] += scale * values[k];
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
