package borderwright.engine.survey.network;

import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Weighted least squares by Gauss-Newton steps, damped only while a step does not lower the weighted sum of squares.
 *
 * <p>Each step solves {@code (A'PA + wBB' + lambda D) dx = A'Pv}: {@code B} holds the plan movements that no observation
 * knows (two shifts and a turn of the datum points), {@code D} the diagonal (Levenberg 1944, Marquardt 1963). With
 * {@code B} added the matrix is regular although no corner is held, and the steps do not move the datum points as a
 * whole.
 */
public final class LeastSquares {
    /** Undamped steps square the error near the end; this many are only used when readings disagree grossly. */
    private static final int MOST_STEPS = 200;

    private static final double FIRST_DAMPING = 1e-3;
    private static final double MOST_DAMPING = 1e9;
    /** A step below this share of the network's extent ends the search. */
    private static final double STEP_SHARE = 1e-11;
    /** Below this share steps are taken as long as they shrink. */
    private static final double NEAR_SHARE = 1e-7;

    private final Network network;
    private final Positions at;
    private final double extent;

    private LeastSquares(Network network, Positions start) {
        this.network = network;
        this.at = start.copy();
        this.extent = extent(network, start);
    }

    /** The adjusted network; empty when the steps do not settle or some point is not held. */
    public static Optional<Adjustment> adjust(Network network, Positions start) {
        return new LeastSquares(network, start).run();
    }

    private Optional<Adjustment> run() {
        Positions current = at;
        double cost = cost(network, current);
        double damping = 0;
        double lastSize = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS; step++) {
            Optional<DMatrixRMaj> move = solve(NormalEquations.of(network, current), damping);
            double size = move.map(CommonOps_DDRM::elementMaxAbs).orElse(Double.POSITIVE_INFINITY);
            Positions next = move.isPresent() ? moved(current, move.get()) : current;
            double nextCost = cost(network, next);
            boolean lower = move.isPresent() && nextCost < cost;
            // near the bottom the sum no longer falls within rounding, while the steps still shrink
            boolean nearer = size < NEAR_SHARE * extent && size < lastSize;
            if (lower || nearer) {
                current = next;
                cost = nextCost;
                lastSize = size;
                damping = damping < 1e-6 ? 0 : damping / 10;
            }
            if (size <= STEP_SHARE * extent || (size < NEAR_SHARE * extent && !lower && !nearer)) {
                return Adjustment.at(network, current);
            }
            if (!lower && !nearer) {
                damping = damping == 0 ? FIRST_DAMPING : damping * 10;
                if (damping > MOST_DAMPING) {
                    return Optional.empty();
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<DMatrixRMaj> solve(NormalEquations normal, double damping) {
        DMatrixRMaj matrix = normal.matrix().copy();
        for (int i = 0; i < matrix.numRows; i++) {
            matrix.set(i, i, matrix.get(i, i) * (1 + damping));
        }
        DMatrixRMaj move = new DMatrixRMaj(matrix.numRows, 1);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(matrix.numRows);
        if (!solver.setA(matrix)) {
            return Optional.empty();
        }
        solver.solve(normal.right(), move);
        return Optional.of(move);
    }

    private Positions moved(Positions from, DMatrixRMaj move) {
        Positions next = from.copy();
        for (int p = 0; p < network.points(); p++) {
            int place = network.placeUnknown(p);
            if (place >= 0) {
                next.move(p, move.get(place, 0), move.get(place + 1, 0));
            }
            int height = network.heightUnknown(p);
            if (height >= 0) {
                next.raise(p, move.get(height, 0));
            }
        }
        return next;
    }

    /** Weighted sum of squared misclosures. */
    static double cost(Network network, Positions at) {
        double sum = 0;
        List<Observation> observations = network.observations();
        for (Observation observation : observations) {
            double normed = observation.misclosure(at) / observation.sd();
            sum += normed * normed;
        }
        return sum;
    }

    private static double extent(Network network, Positions at) {
        double most = 1;
        for (int p = 1; p < network.points(); p++) {
            if (network.inPlan(p)) {
                most = Math.max(most, at.at(p).distanceMm(at.at(0)));
            }
        }
        return most;
    }
}
