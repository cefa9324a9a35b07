package borderwright.bench.cutting;

import borderwright.bench.cutting.SideBySide.Outcome;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;

/** Every full pattern of every board, and a general mixed-integer solver (SCIP) to choose among them. */
final class ListedPatterns {
    private static final int MOST_PATTERNS = 50_000;

    private final PlainCase plain;
    private final double limit;
    private final int[] count;
    private long start;
    private int patterns;
    private MPConstraint[] row = {};

    ListedPatterns(PlainCase plain, double limit) {
        this.plain = plain;
        this.limit = limit;
        this.count = new int[plain.size().size()];
    }

    /** The outcome; no cost where there are too many patterns to list, or too little time. */
    Outcome solve() {
        start = System.nanoTime();
        MPSolver solver = MPSolver.createSolver("SCIP");
        row = new MPConstraint[count.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = solver.makeConstraint(plain.demand().get(i), Double.POSITIVE_INFINITY);
        }
        for (int j = 0; j < plain.capacity().size(); j++) {
            list(solver, j, 0, plain.capacity().get(j));
        }
        if (patterns > MOST_PATTERNS) {
            return Outcome.none(SideBySide.since(start));
        }
        solver.setTimeLimit((long) Math.max(1, 1000 * (limit - SideBySide.since(start))));
        MPSolver.ResultStatus status = solver.solve();
        boolean found = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        boolean proven = status == MPSolver.ResultStatus.OPTIMAL;
        return new Outcome(
                found ? Math.round(solver.objective().value()) : Long.MAX_VALUE, proven, SideBySide.since(start));
    }

    private void list(MPSolver solver, int j, int i, int room) {
        if (patterns > MOST_PATTERNS || SideBySide.since(start) > limit) {
            patterns = MOST_PATTERNS + 1;
            return;
        }
        if (i == count.length) {
            if (isFull(room)) {
                patterns++;
                MPVariable x = solver.makeIntVar(0, Double.POSITIVE_INFINITY, "");
                MPObjective objective = solver.objective();
                objective.setCoefficient(x, plain.price().get(j));
                objective.setMinimization();
                for (int k = 0; k < count.length; k++) {
                    if (count[k] > 0) {
                        row[k].setCoefficient(x, count[k]);
                    }
                }
            }
            return;
        }
        int size = plain.size().get(i);
        for (int n = Math.min(plain.demand().get(i), room / size); n >= 0; n--) {
            count[i] = n;
            list(solver, j, i + 1, room - n * size);
        }
        count[i] = 0;
    }

    private boolean isFull(int room) {
        for (int i = 0; i < count.length; i++) {
            if (plain.size().get(i) <= room && count[i] < plain.demand().get(i)) {
                return false;
            }
        }
        return true;
    }
}
