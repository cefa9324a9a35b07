package borderwright.engine.linear;

import borderwright.engine.effort.Budget;

/** Dual simplex: from a basis whose prices are right to one whose values are within their bounds too. */
final class DualSimplex {
    private static final double VIOLATED = 1e-7;
    private static final double TINY = 1e-12;

    private final Basis basis;
    private final ColumnStore store;
    private double[] reduced = {};
    private double[] rowAlpha = {};
    /** Columns with an entry in the leaving row. */
    private int[] touched = {};

    private int touches;
    private double objective;

    DualSimplex(Basis basis) {
        this.basis = basis;
        this.store = basis.store;
    }

    /**
     * Runs.
     *
     * @param cutoff stop once the objective is above it
     * @param start objective now
     * @return whether every value is within its bounds, and the objective within the cutoff
     */
    boolean run(double cutoff, double start, Budget budget) {
        objective = start;
        reduce();
        int guard = 50 * (basis.rows + 10);
        while (budget.spend(2L * basis.numbers() + 10L * basis.rows + 8L * store.awakes()) && guard-- > 0) {
            if (basis.refactorIfStale()) {
                budget.spend((long) basis.rows * basis.rows / 2);
                reduce();
            }
            if (objective > cutoff) {
                return false;
            }
            int leaving = mostViolated();
            if (leaving < 0) {
                return true;
            }
            double value = basis.value[leaving];
            boolean low = value < basis.lowerIn(leaving);
            double gap = low ? basis.lowerIn(leaving) - value : value - basis.upperIn(leaving);
            double[] inverseRow = basis.row(leaving);
            int entering = entering(inverseRow, low);
            if (entering < 0) {
                return false;
            }
            objective += step(leaving, entering, low, inverseRow) * gap;
        }
        return false;
    }

    private void reduce() {
        if (reduced.length < store.columns()) {
            reduced = new double[2 * store.columns()];
            rowAlpha = new double[2 * store.columns()];
            touched = new int[2 * store.columns()];
        }
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            reduced[j] = basis.place(j) >= 0 ? 0 : basis.reducedCost(j);
        }
    }

    private int mostViolated() {
        int worst = -1;
        double most = VIOLATED;
        for (int i = 0; i < basis.rows; i++) {
            double over = Math.max(basis.lowerIn(i) - basis.value[i], basis.value[i] - basis.upperIn(i));
            if (over > most) {
                most = over;
                worst = i;
            }
        }
        return worst;
    }

    private int entering(double[] inverseRow, boolean low) {
        double sign = low ? -1 : 1;
        double least = Double.POSITIVE_INFINITY;
        touches = 0;
        int awakes = store.awakes();
        for (int k = 0; k < awakes; k++) {
            int j = store.awake(k);
            int place = basis.place(j);
            if (place >= 0) {
                continue;
            }
            double a = store.times(inverseRow, j);
            if (Math.abs(a) <= TINY) {
                continue;
            }
            rowAlpha[j] = a;
            touched[touches++] = j;
            double directed = place == Basis.AT_LOWER ? sign * a : -sign * a;
            if (directed > PrimalSimplex.PIVOT && !store.isFixed(j)) {
                least = Math.min(least, (Math.abs(reduced[j]) + PrimalSimplex.ZERO) / directed);
            }
        }
        int best = -1;
        double size = PrimalSimplex.PIVOT;
        for (int k = 0; k < touches; k++) {
            int j = touched[k];
            double directed = basis.place(j) == Basis.AT_LOWER ? sign * rowAlpha[j] : -sign * rowAlpha[j];
            if (directed > size && Math.abs(reduced[j]) / directed <= least && !store.isFixed(j)) {
                best = j;
                size = directed;
            }
        }
        return best;
    }

    /** Exchanges; the rise of the objective for each unit of violation. */
    private double step(int leaving, int entering, boolean low, double[] inverseRow) {
        basis.transform(entering);
        double target = low ? basis.lowerIn(leaving) : basis.upperIn(leaving);
        double step = (basis.value[leaving] - target) / basis.alpha[leaving];
        double ratio = reduced[entering] / rowAlpha[entering];
        double value = basis.valueOf(entering) + step;
        int out = basis.column[leaving];
        basis.move(-step);
        basis.exchange(
                leaving, entering, value, low ? Basis.Bound.LOWER : Basis.Bound.UPPER, reduced[entering], inverseRow);
        for (int k = 0; k < touches; k++) {
            reduced[touched[k]] -= ratio * rowAlpha[touched[k]];
        }
        reduced[entering] = 0;
        reduced[out] = -ratio;
        return Math.abs(ratio);
    }
}
