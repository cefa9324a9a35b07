package borderwright.engine.linear;

import borderwright.engine.effort.Budget;
import java.util.Arrays;

/**
 * Primal simplex: from a basis within its bounds to one whose prices leave nothing to gain. The column is taken that gains
 * most for the length of its edge, as far as that is known (Devex; Harris 1973, from memory): packings stand in corners where
 * many edges lead nowhere, and going by the plain gain takes half as many steps again.
 */
final class PrimalSimplex {
    static final double ZERO = 1e-9;
    static final double PIVOT = 1e-8;
    /** Steps of no length after which the first column that gains is taken, so that the method leaves the corner. */
    private static final int STALLED = 300;
    /** Columns passed over in one run before its basis is taken as it is. */
    private static final int MOST_NO_ENDS = 20;
    /** Squared lengths of edges above which they are all taken as 1 again. */
    private static final double MOST_WEIGHT = 1e9;

    private final Basis basis;
    private final ColumnStore store;
    /** Reduced cost of each column, kept up to date from step to step. */
    private double[] reduced = {};
    /** Squared length of each column's edge, roughly. */
    private double[] weight = {};

    private boolean isFresh;
    private int stalled;
    /** A column that seemed to gain without end, which only errors of rounding can do: it is passed over. */
    private int barred;

    private int noEnds;

    PrimalSimplex(Basis basis) {
        this.basis = basis;
        this.store = basis.store;
    }

    boolean run(Budget budget) {
        if (weight.length < store.columns()) {
            weight = new double[2 * store.columns()];
            reduced = new double[weight.length];
        }
        Arrays.fill(weight, 1);
        stalled = 0;
        barred = -1;
        noEnds = 0;
        isFresh = false;
        refresh();
        while (budget.spend(2L * basis.numbers() + 10L * basis.rows + 5L * store.awakes())) {
            if (basis.refactorIfStale()) {
                budget.spend((long) basis.rows * basis.rows / 2);
                refresh();
            }
            int entering = stalled > STALLED ? firstThatGains() : best();
            if (entering >= 0 && !isFresh && gain(entering, basis.reducedCost(entering)) <= ZERO) {
                entering = -1;
            }
            if (noEnds > MOST_NO_ENDS || (entering < 0 && isFresh)) {
                return true;
            }
            if (entering < 0) {
                refresh();
                continue;
            }
            stalled = step(entering) > ZERO ? 0 : stalled + 1;
        }
        return false;
    }

    /** Works all reduced costs out of the present prices. */
    private void refresh() {
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            reduced[j] = basis.place(j) >= 0 ? 0 : basis.reducedCost(j);
        }
        isFresh = true;
    }

    private double gain(int j, double cost) {
        int place = basis.place(j);
        if (place >= 0 || j == barred || store.isFixed(j)) {
            return 0;
        }
        return place == Basis.AT_LOWER ? -cost : cost;
    }

    private int firstThatGains() {
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            if (gain(j, reduced[j]) > ZERO) {
                return j;
            }
        }
        return -1;
    }

    /** The column that gains most for its edge, -1 when none gains. */
    private int best() {
        int best = -1;
        double most = 0;
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            double g = gain(j, reduced[j]);
            if (g > ZERO && g * g > most * weight[j]) {
                most = g * g / weight[j];
                best = j;
            }
        }
        return best;
    }

    private double step(int entering) {
        double direction = basis.place(entering) == Basis.AT_LOWER ? 1 : -1;
        basis.transform(entering);
        double longest = longestStep(direction);
        int leaving = leavingRow(direction, longest);
        double step = leaving < 0
                ? longest
                : Math.max(0, room(leaving, direction * basis.alpha[leaving]) / Math.abs(basis.alpha[leaving]));
        double span = store.upper(entering) - store.lower(entering);
        if (span <= step) {
            basis.move(-direction * span);
            basis.setPlace(entering, direction > 0 ? Basis.AT_UPPER : Basis.AT_LOWER);
            return span;
        }
        if (leaving < 0) {
            barred = entering;
            noEnds++;
            basis.refactor();
            refresh();
            return 0;
        }
        boolean toUpper = direction * basis.alpha[leaving] < 0;
        double value = basis.valueOf(entering) + direction * step;
        double cost = basis.reducedCost(entering);
        double[] row = basis.row(leaving);
        int left = basis.column[leaving];
        basis.move(-direction * step);
        basis.exchange(leaving, entering, value, toUpper ? Basis.Bound.UPPER : Basis.Bound.LOWER, cost, row);
        follow(entering, left, cost, basis.alpha[leaving], row);
        return step;
    }

    /** Brings reduced costs and edges up to date after an exchange. */
    private void follow(int entered, int left, double cost, double pivot, double[] row) {
        double edge = weight[entered];
        double largest = 1;
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            if (basis.place(j) >= 0 || j == left) {
                continue;
            }
            double ratio = store.times(row, j) / pivot;
            if (ratio != 0) {
                reduced[j] -= cost * ratio;
                weight[j] = Math.max(weight[j], ratio * ratio * edge);
                largest = Math.max(largest, weight[j]);
            }
        }
        reduced[entered] = 0;
        reduced[left] = -cost / pivot;
        weight[left] = Math.max(edge / (pivot * pivot), 1);
        isFresh = false;
        if (Math.max(largest, weight[left]) > MOST_WEIGHT) {
            Arrays.fill(weight, 1);
        }
    }

    private double room(int i, double towards) {
        return towards > 0 ? basis.value[i] - basis.lowerIn(i) : basis.upperIn(i) - basis.value[i];
    }

    /** How far values may move when each may overshoot its bound by a tolerance (ratio test of Harris 1973, from memory). */
    private double longestStep(double direction) {
        double longest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < basis.rows; i++) {
            double a = direction * basis.alpha[i];
            if (Math.abs(a) > PIVOT) {
                longest = Math.min(longest, (room(i, a) + ZERO) / Math.abs(a));
            }
        }
        return longest;
    }

    /** Of the rows that stop the step within that, the one with the largest pivot. */
    private int leavingRow(double direction, double longest) {
        int leaving = -1;
        double size = PIVOT;
        for (int i = 0; i < basis.rows; i++) {
            double a = direction * basis.alpha[i];
            if (Math.abs(a) > size && room(i, a) / Math.abs(a) <= longest) {
                leaving = i;
                size = Math.abs(a);
            }
        }
        return leaving;
    }
}
