package borderwright.engine.survey;

import borderwright.engine.survey.SurveyReport.Ellipse;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * An adjusted network: places, their cofactors, and what each observation shows.
 *
 * <p>All standard deviations are a priori: those stated for the observations, carried through. With an inner datum the
 * cofactors are those of the least trace over the datum points.
 */
final class Adjustment {
    /** An observation below this redundancy number is not controlled by the rest, within rounding. */
    static final double NOT_CONTROLLED = 1e-6;

    private final Network network;
    private final Positions at;
    private final DMatrixRMaj cofactors;
    private final double[] misclosure;
    private final double[] redundancy;

    private Adjustment(Network network, Positions at, DMatrixRMaj cofactors) {
        this.network = network;
        this.at = at;
        this.cofactors = cofactors;
        int m = network.observations().size();
        misclosure = new double[m];
        redundancy = new double[m];
        for (int i = 0; i < m; i++) {
            Observation observation = network.observations().get(i);
            misclosure[i] = observation.misclosure(at);
            double share = 1 - variance(observation) / (observation.sd() * observation.sd());
            redundancy[i] = share < NOT_CONTROLLED ? 0 : Math.min(share, 1);
        }
    }

    /** The adjustment whose steps have settled at these places; empty when some point is not held. */
    static Optional<Adjustment> at(Network network, Positions at) {
        NormalEquations normal = NormalEquations.of(network, at);
        int n = network.unknowns();
        DMatrixRMaj inverse = new DMatrixRMaj(n, n);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(n);
        if (n > 0) {
            if (!solver.setA(normal.matrix().copy())) {
                return Optional.empty();
            }
            solver.invert(inverse);
        }
        if (network.datumDefect() > 0) {
            releaseDatum(network, at, inverse, normal.datumWeight());
        }
        return Optional.of(new Adjustment(network, at, inverse));
    }

    /** Takes the datum's own share out again: {@code (N + wBB')^-1 - G (wC^2)^-1 G'} with {@code C = B'G}. */
    private static void releaseDatum(Network network, Positions at, DMatrixRMaj inverse, double weight) {
        DMatrixRMaj all = DatumMovements.ofAllPoints(network, at);
        for (int i = 0; i < inverse.numRows; i++) {
            for (int j = 0; j < inverse.numCols; j++) {
                double sum = 0;
                for (int k = 0; k < all.numCols; k++) {
                    // B has unit columns, so C is the unit matrix
                    sum += all.get(i, k) * all.get(j, k);
                }
                inverse.add(i, j, -sum / weight);
            }
        }
    }

    Network network() {
        return network;
    }

    Positions positions() {
        return at;
    }

    int degreesOfFreedom() {
        return network.degreesOfFreedom();
    }

    /** Weighted sum of squared residuals. */
    double weightedSquares() {
        return LeastSquares.cost(network, at);
    }

    /** Adjusted less measured. */
    double residual(int observation) {
        return -misclosure[observation];
    }

    /** Share of an error in the observation that shows in its own residual: 0 (none) to 1. */
    double redundancyNumber(int observation) {
        return redundancy[observation];
    }

    /** Residual over its standard deviation (Baarda's w); 0 where nothing controls the observation. */
    double normalised(int observation) {
        double r = redundancy[observation];
        return r == 0 ? 0 : residual(observation) / (sd(observation) * Math.sqrt(r));
    }

    /** The value that all other observations imply, to first order. */
    double implied(int observation) {
        return network.observations().get(observation).measured() + residual(observation) / redundancy[observation];
    }

    /** Standard deviation of {@link #implied}. */
    double sdImplied(int observation) {
        double r = redundancy[observation];
        return sd(observation) * Math.sqrt((1 - r) / r);
    }

    private double sd(int observation) {
        return network.observations().get(observation).sd();
    }

    /** Variance of the adjusted value of an observation, which need not belong to the network. */
    double variance(Observation observation) {
        return covariance(observation, observation);
    }

    /** Covariance of the adjusted values of two observations. */
    double covariance(Observation one, Observation other) {
        Row a = new Row(network).of(one, at);
        Row b = new Row(network).of(other, at);
        double sum = 0;
        for (int i = 0; i < a.count(); i++) {
            for (int j = 0; j < b.count(); j++) {
                sum += a.value(i) * b.value(j) * cofactors.get(a.unknown(i), b.unknown(j));
            }
        }
        return sum;
    }

    /** Covariance of the adjusted value of an observation and an unknown. */
    double covariance(Observation observation, int unknown) {
        Row row = new Row(network).of(observation, at);
        double sum = 0;
        for (int i = 0; i < row.count(); i++) {
            sum += row.value(i) * cofactors.get(row.unknown(i), unknown);
        }
        return sum;
    }

    /** Covariance of two unknowns; 0 where one is given. */
    double cofactor(int unknown, int other) {
        return unknown < 0 || other < 0 ? 0 : cofactors.get(unknown, other);
    }

    double sdX(int point) {
        return deviation(network.placeUnknown(point));
    }

    double sdY(int point) {
        int place = network.placeUnknown(point);
        return place < 0 ? 0 : deviation(place + 1);
    }

    double sdHeight(int point) {
        return deviation(network.heightUnknown(point));
    }

    private double deviation(int unknown) {
        return Math.sqrt(Math.max(cofactor(unknown, unknown), 0));
    }

    Ellipse ellipse(int point) {
        int place = network.placeUnknown(point);
        return place < 0
                ? new Ellipse(0, 0, 0)
                : ellipse(cofactor(place, place), cofactor(place, place + 1), cofactor(place + 1, place + 1));
    }

    /** The standard error ellipse of a two by two covariance matrix. */
    static Ellipse ellipse(double xx, double xy, double yy) {
        double middle = (xx + yy) / 2;
        double reach = StrictMath.hypot((xx - yy) / 2, xy);
        double bearing = 0.5 * StrictMath.atan2(2 * xy, xx - yy);
        return new Ellipse(Math.sqrt(Math.max(middle + reach, 0)), Math.sqrt(Math.max(middle - reach, 0)), bearing);
    }
}
