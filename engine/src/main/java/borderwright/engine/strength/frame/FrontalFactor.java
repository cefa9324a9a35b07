package borderwright.engine.strength.frame;

import borderwright.engine.strength.frame.Fronts.Front;
import java.util.Arrays;

/**
 * The Cholesky factor of a frame's stiffness, front by front.
 *
 * <p>Every front keeps what it hands on, so that only those above a change are worked out again. Each is summed afresh from
 * the stiffnesses of its own parts: the factor depends on the stiffnesses alone and not on those before, to the last bit.
 */
final class FrontalFactor {
    private final Fronts fronts;

    /** By front: its lower triangle, by columns; what it hands on stands in its last rows and columns. */
    private final double[][] values;

    private final boolean[] changed;
    private long multiplyAdds;

    /** Adds the stiffnesses that belong to a front. */
    @FunctionalInterface
    interface OwnStiffness {
        /**
         * Adds them, each front's once.
         *
         * @param front index
         * @param values of the front, lower triangle by columns, nothing yet
         */
        void addTo(int front, double[] values);
    }

    FrontalFactor(Fronts fronts) {
        this.fronts = fronts;
        int count = fronts.count();
        values = new double[count][];
        changed = new boolean[count];
        for (int f = 0; f < count; f++) {
            values[f] = new double[fronts.get(f).size() * fronts.get(f).size()];
        }
        markAll();
    }

    /** Another stiffness in this front from now on. */
    void mark(int front) {
        changed[front] = true;
    }

    void markAll() {
        Arrays.fill(changed, true);
    }

    /** Works out what is marked; false where the matrix is not positive definite: some part is held by nothing. */
    boolean decompose(OwnStiffness own) {
        for (int f = 0; f < changed.length; f++) {
            if (changed[f]) {
                Front front = fronts.get(f);
                multiplyAdds += front.multiplyAdds();
                Arrays.fill(values[f], 0);
                own.addTo(f, values[f]);
                for (int below : front.below) {
                    takeFrom(below, values[f], front.size());
                }
                if (!eliminate(values[f], front.size(), front.pivots)) {
                    markAll();
                    return false;
                }
                if (front.above >= 0) {
                    changed[front.above] = true;
                }
            }
        }
        Arrays.fill(changed, false);
        return true;
    }

    /** All work so far, in multiplications with an addition each. */
    long multiplyAdds() {
        return multiplyAdds;
    }

    private void takeFrom(int below, double[] to, int size) {
        Front front = fronts.get(below);
        double[] from = values[below];
        int[] rows = front.rowsAbove;
        int pivots = front.pivots;
        for (int c = 0; c < rows.length; c++) {
            int source = (pivots + c) * front.size() + pivots;
            int target = rows[c] * size;
            for (int r = c; r < rows.length; r++) {
                to[target + rows[r]] += from[source + r];
            }
        }
    }

    /** Eliminates the first columns of a full matrix; false at a pivot that is not above 0. */
    static boolean eliminate(double[] f, int size, int pivots) {
        for (int first = 0; first < pivots; first += 4) {
            int next = Math.min(pivots, first + 4);
            for (int j = first; j < next; j++) {
                double pivot = f[j * size + j];
                if (!(pivot > 0)) {
                    return false;
                }
                scale(f, j * size + j, (j + 1) * size, 1 / Math.sqrt(pivot));
                for (int column = j + 1; column < next; column++) {
                    take(f, size, column, j);
                }
            }
            for (int column = next; column < size; column++) {
                if (next - first == 4) {
                    takeFour(f, size, column, first);
                } else {
                    for (int j = first; j < next; j++) {
                        take(f, size, column, j);
                    }
                }
            }
        }
        return true;
    }

    private static void scale(double[] f, int from, int to, double by) {
        for (int i = from; i < to; i++) {
            f[i] *= by;
        }
    }

    /** Takes an eliminated column off another. */
    private static void take(double[] f, int size, int column, int eliminated) {
        int off = (eliminated - column) * size;
        int end = (column + 1) * size;
        double by = f[eliminated * size + column];
        for (int i = column * size + column; i < end; i++) {
            f[i] -= by * f[off + i];
        }
    }

    /** The same for four columns in a row: a quarter of the loads and stores. */
    private static void takeFour(double[] f, int size, int column, int first) {
        int off0 = (first - column) * size;
        int off1 = off0 + size;
        int off2 = off1 + size;
        int off3 = off2 + size;
        int start = column * size + column;
        int end = (column + 1) * size;
        double by0 = f[off0 + start];
        double by1 = f[off1 + start];
        double by2 = f[off2 + start];
        double by3 = f[off3 + start];
        for (int i = start; i < end; i++) {
            f[i] -= by0 * f[off0 + i] + by1 * f[off1 + i] + by2 * f[off2 + i] + by3 * f[off3 + i];
        }
    }

    /** The displacements under a load on every equation. */
    double[] solve(double[] load) {
        double[] x = load.clone();
        for (int f = 0; f < values.length; f++) {
            Front front = fronts.get(f);
            forward(front, values[f], x);
        }
        for (int f = values.length - 1; f >= 0; f--) {
            backward(fronts.get(f), values[f], x);
        }
        return x;
    }

    private static void forward(Front front, double[] values, double[] x) {
        int[] equations = front.equations;
        for (int j = 0; j < front.pivots; j++) {
            int column = j * equations.length;
            double pivot = x[equations[j]] / values[column + j];
            x[equations[j]] = pivot;
            for (int i = j + 1; i < equations.length; i++) {
                x[equations[i]] -= values[column + i] * pivot;
            }
        }
    }

    private static void backward(Front front, double[] values, double[] x) {
        int[] equations = front.equations;
        for (int j = front.pivots - 1; j >= 0; j--) {
            int column = j * equations.length;
            double rest = x[equations[j]];
            for (int i = j + 1; i < equations.length; i++) {
                rest -= values[column + i] * x[equations[i]];
            }
            x[equations[j]] = rest / values[column + j];
        }
    }
}
