package borderwright.engine.buying;

import borderwright.engine.stock.Budget;

/**
 * Primal simplex: from a basis within its bounds to one whose prices leave nothing to gain. The most promising columns are
 * found in one pass over all and tried until none of them gains; then all are looked at again.
 */
final class PrimalSimplex {
    static final double ZERO = 1e-9;
    static final double PIVOT = 1e-8;
    private static final int CANDIDATES = 40;
    /** Steps of no length after which the first column that gains is taken, so that the method leaves the corner. */
    private static final int STALLED = 300;
    /** Columns passed over in one run before its basis is taken as it is. */
    private static final int MOST_NO_ENDS = 20;

    private final Basis basis;
    private final ColumnStore store;
    private final int[] candidate = new int[CANDIDATES];
    private final double[] candidateGain = new double[CANDIDATES];
    private int candidates;
    private int stalled;
    /** A column that seemed to gain without end, which only errors of rounding can do: it is passed over. */
    private int barred;

    private int noEnds;

    PrimalSimplex(Basis basis) {
        this.basis = basis;
        this.store = basis.store;
    }

    boolean run(Budget budget) {
        candidates = 0;
        stalled = 0;
        barred = -1;
        noEnds = 0;
        while (budget.spend(2L * basis.numbers() + 10L * basis.rows)) {
            if (basis.refactorIfStale()) {
                budget.spend((long) basis.rows * basis.rows / 2);
            }
            int entering = bestCandidate();
            if (entering < 0) {
                budget.spend(8L * store.awakes());
                entering = stalled > STALLED ? firstThatGains() : chooseCandidates();
                if (entering < 0 || noEnds > MOST_NO_ENDS) {
                    return true;
                }
            }
            stalled = step(entering) > ZERO ? 0 : stalled + 1;
            candidates = stalled > STALLED ? 0 : candidates;
        }
        return false;
    }

    private double gain(int j) {
        int place = basis.place(j);
        if (place >= 0 || j == barred || store.isFixed(j)) {
            return 0;
        }
        double d = basis.reducedCost(j);
        return place == Basis.AT_LOWER ? -d : d;
    }

    private int bestCandidate() {
        int best = -1;
        double most = ZERO;
        for (int k = 0; k < candidates; k++) {
            double g = gain(candidate[k]);
            if (g > most) {
                most = g;
                best = candidate[k];
            }
        }
        return best;
    }

    private int firstThatGains() {
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            if (gain(j) > ZERO) {
                return j;
            }
        }
        return -1;
    }

    /** Keeps the columns that gain most; the best of them, -1 when none gains. */
    private int chooseCandidates() {
        candidates = 0;
        int least = 0;
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            double g = gain(j);
            if (g <= ZERO || (candidates == CANDIDATES && g <= candidateGain[least])) {
                continue;
            }
            int at = candidates < CANDIDATES ? candidates++ : least;
            candidate[at] = j;
            candidateGain[at] = g;
            if (candidates == CANDIDATES) {
                least = 0;
                for (int c = 1; c < CANDIDATES; c++) {
                    least = candidateGain[c] < candidateGain[least] ? c : least;
                }
            }
        }
        return bestCandidate();
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
            candidates = 0;
            basis.refactor();
            return 0;
        }
        boolean toUpper = direction * basis.alpha[leaving] < 0;
        double value = basis.valueOf(entering) + direction * step;
        double reduced = basis.reducedCost(entering);
        basis.move(-direction * step);
        basis.exchange(leaving, entering, value, toUpper, reduced, basis.row(leaving));
        return step;
    }

    private double room(int i, double towards) {
        return towards > 0 ? basis.value[i] - basis.lowerIn(i) : basis.upperIn(i) - basis.value[i];
    }

    /** How far values may move when each may overshoot its bound by a hair (Harris 1973, from memory). */
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
