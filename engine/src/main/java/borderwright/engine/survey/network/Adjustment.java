package borderwright.engine.survey.network;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * An adjusted network: places, their cofactors, and what each observation shows.
 *
 * <p>One observation may be set aside: it then takes no part in finding the places, and its residual is what the others
 * say against it. By the linear theory its redundancy number, its normalised residual and the weighted sum of squares are
 * the same as if it had taken part; only the places are not bent by it.
 *
 * <p>All standard deviations are a priori: those stated for the observations, carried through. With an inner datum the
 * cofactors are those of the least trace over the datum points.
 */
public final class Adjustment {
    /** An observation below this redundancy number is not controlled by the rest, within rounding. */
    public static final double NOT_CONTROLLED = 1e-6;

    /**
     * From so many standard deviations over the root of the redundancy number on a slip shows: the sum of the normal quantiles
     * of 0.9995 and 0.80, for a false alarm of 0.1 % in one observation and a chance of 80 % to find the slip. W. Baarda, A
     * testing procedure for use in geodetic networks (1968), prints 4.13.
     */
    public static final double SHOWS_FROM = 4.132147965064809;

    /** In place of the number of an observation set aside: there is none. */
    static final int NONE = -1;

    private final Network network;
    private final Positions at;
    private final DMatrixRMaj cofactors;
    private final double[] misclosure;
    private final double[] redundancy;
    private final int setAside;

    private Adjustment(Network network, Positions at, DMatrixRMaj cofactors, int setAside) {
        this.setAside = setAside;
        this.network = network;
        this.at = at;
        this.cofactors = cofactors;
        int m = network.observations().size();
        misclosure = new double[m];
        redundancy = new double[m];
        for (int i = 0; i < m; i++) {
            Observation observation = network.observations().get(i);
            misclosure[i] = observation.misclosure(at);
            double ownVariance = observation.sd() * observation.sd();
            double share = i == setAside
                    ? ownVariance / (ownVariance + variance(observation))
                    : 1 - variance(observation) / ownVariance;
            redundancy[i] = share < NOT_CONTROLLED ? 0 : Math.min(share, 1);
        }
    }

    /** The adjustment whose steps have settled at these places; empty when some point is not held. */
    public static Optional<Adjustment> at(Network network, Positions at) {
        return at(network, at, NONE);
    }

    private static Optional<Adjustment> at(Network network, Positions at, int setAside) {
        NormalEquations normal = NormalEquations.of(setAside == NONE ? network : network.without(setAside), at);
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
        return Optional.of(new Adjustment(network, at, inverse, setAside));
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

    /** The same shape elsewhere: places moved as a whole. */
    public Adjustment movedTo(Positions places) {
        return at(network, places, setAside)
                .orElseThrow(() -> new IllegalArgumentException("an adjusted network stays adjusted when it is moved"));
    }

    /** These places together with an observation that took no part in finding them. */
    public Adjustment settingAside(int number, Observation observation) {
        return at(network.inserting(number, observation), at, number)
                .orElseThrow(() -> new IllegalArgumentException("an adjusted network stays adjusted"));
    }

    public Network network() {
        return network;
    }

    public Positions positions() {
        return at;
    }

    public int degreesOfFreedom() {
        return network.degreesOfFreedom();
    }

    /** Weighted sum of squared residuals. */
    public double weightedSquares() {
        if (setAside == NONE) {
            return LeastSquares.cost(network, at);
        }
        double against = normalised(setAside);
        return LeastSquares.cost(network.without(setAside), at) + against * against;
    }

    /** Adjusted less measured. */
    public double residual(int observation) {
        return -misclosure[observation];
    }

    /** Share of an error in the observation that shows in its own residual: 0 (none) to 1. */
    public double redundancyNumber(int observation) {
        return redundancy[observation];
    }

    /** Baarda's minimal detectable bias, in the observation's unit; empty where nothing controls the observation. */
    public OptionalDouble leastSlipThatShows(int observation) {
        double r = redundancy[observation];
        return r == 0 ? OptionalDouble.empty() : OptionalDouble.of(SHOWS_FROM * sd(observation) / Math.sqrt(r));
    }

    /** Residual over its standard deviation (Baarda's w); 0 where nothing controls the observation. */
    public double normalised(int observation) {
        double r = redundancy[observation];
        if (observation == setAside) {
            return residual(observation) * Math.sqrt(r) / sd(observation);
        }
        return r == 0 ? 0 : residual(observation) / (sd(observation) * Math.sqrt(r));
    }

    private double sd(int observation) {
        return network.observations().get(observation).sd();
    }

    /** Variance of the adjusted value of an observation, which need not belong to the network. */
    public double variance(Observation observation) {
        DesignRow row = new DesignRow(network).of(observation, at);
        double sum = 0;
        for (int i = 0; i < row.count(); i++) {
            for (int j = 0; j < row.count(); j++) {
                sum += row.value(i) * row.value(j) * cofactors.get(row.unknown(i), row.unknown(j));
            }
        }
        return sum;
    }

    /** What an observation has to do with all unknowns, for asking many things about it. */
    public Influence influence(Observation observation) {
        DesignRow row = new DesignRow(network).of(observation, at);
        double[] covariances = new double[network.unknowns()];
        for (int i = 0; i < row.count(); i++) {
            for (int u = 0; u < covariances.length; u++) {
                covariances[u] += row.value(i) * cofactors.get(row.unknown(i), u);
            }
        }
        return new Influence(covariances);
    }

    /** Covariances of one observation's adjusted value. */
    public final class Influence {
        private final double[] covariances;

        private Influence(double[] covariances) {
            this.covariances = covariances;
        }

        /** With an unknown. */
        public double on(int unknown) {
            return covariances[unknown];
        }

        /** With another observation's adjusted value. */
        public double on(Observation other) {
            return on(new DesignRow(network).of(other, at));
        }

        /** With the observation of a row of partial derivatives at the adjusted places. */
        public double on(DesignRow row) {
            double sum = 0;
            for (int i = 0; i < row.count(); i++) {
                sum += row.value(i) * covariances[row.unknown(i)];
            }
            return sum;
        }
    }

    /** Covariance of two unknowns; 0 where one is given. */
    public double cofactor(int unknown, int other) {
        return unknown < 0 || other < 0 ? 0 : cofactors.get(unknown, other);
    }

    public double sdX(int point) {
        return deviation(network.placeUnknown(point));
    }

    public double sdY(int point) {
        int place = network.placeUnknown(point);
        return place < 0 ? 0 : deviation(place + 1);
    }

    public double sdHeight(int point) {
        return deviation(network.heightUnknown(point));
    }

    private double deviation(int unknown) {
        return Math.sqrt(Math.max(cofactor(unknown, unknown), 0));
    }

    public ErrorEllipse ellipse(int point) {
        int place = network.placeUnknown(point);
        return place < 0
                ? new ErrorEllipse(0, 0, 0)
                : ellipse(cofactor(place, place), cofactor(place, place + 1), cofactor(place + 1, place + 1));
    }

    /** The standard error ellipse of a two by two covariance matrix. */
    public static ErrorEllipse ellipse(double xx, double xy, double yy) {
        double middle = (xx + yy) / 2;
        double reach = StrictMath.hypot((xx - yy) / 2, xy);
        double bearing = 0.5 * StrictMath.atan2(2 * xy, xx - yy);
        return new ErrorEllipse(
                Math.sqrt(Math.max(middle + reach, 0)), Math.sqrt(Math.max(middle - reach, 0)), bearing);
    }
}
