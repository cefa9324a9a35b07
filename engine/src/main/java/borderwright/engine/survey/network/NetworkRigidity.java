package borderwright.engine.survey.network;

import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Finds whether the observations hold every point of the plan, before any place is known, and which lengths would.
 *
 * <p>The rank of the design matrix is the same at almost all places, so it is taken at random ones (generic rigidity,
 * Asimow and Roth 1978; seeded). What the observations leave free are the columns of the null space; a length between
 * two points takes one of them away when it changes along it.
 */
public final class NetworkRigidity {
    private static final long SEED = 19_780_301;
    /** Diagonal of the triangular factor below this share of the greatest: look closer. */
    private static final double DOUBTFUL = 1e-5;
    /** Eigenvalue below this share of the greatest: a free movement. Rounding leaves about 1e-15. */
    private static final double FREE = 1e-11;
    /** Change of a length along a free movement, below which it does not change (places are of size 1). */
    private static final double STILL = 1e-6;

    private final Network network;
    private final CornerOrder order;
    private final Positions at;
    private List<double[]> movements;

    private NetworkRigidity(Network network, CornerOrder order) {
        this.network = network;
        this.order = order;
        this.at = randomPlaces();
        this.movements = freeMovements();
    }

    /** A length between two points, by their names. */
    public record Line(String from, String to) {}

    /** Lengths that are missing, and the points that they would fix together with those before them. */
    public record Missing(List<Line> lengths, List<String> points) {
        public Missing {
            lengths = List.copyOf(lengths);
            points = List.copyOf(points);
        }
    }

    /** A length between two points, by their numbers. */
    private record Ends(int a, int b) {}

    /** What is missing, in the order in which it would fix point after point; empty when all points are held. */
    public static List<Missing> missing(Network network, CornerOrder order) {
        return new NetworkRigidity(network, order).missing();
    }

    private List<Missing> missing() {
        List<Missing> missing = new ArrayList<>();
        List<Line> pending = new ArrayList<>();
        List<Integer> loose = loose();
        while (!movements.isEmpty()) {
            Optional<Ends> length = bestLength(loose);
            if (length.isEmpty()) {
                // only a movement that no length sees is left, which cannot be with two points or more
                return missing;
            }
            Ends ends = length.get();
            pending.add(new Line(network.name(ends.a), network.name(ends.b)));
            hold(ends.a, ends.b);
            List<Integer> still = loose();
            List<String> fixed = loose.stream()
                    .filter(p -> !still.contains(p))
                    .map(network::name)
                    .toList();
            if (!fixed.isEmpty()) {
                missing.add(new Missing(pending, fixed));
                pending = new ArrayList<>();
            }
            loose = still;
        }
        return missing;
    }

    private Positions randomPlaces() {
        SplittableRandom random = new SplittableRandom(SEED);
        Positions places = new Positions(network.points());
        for (int p = 0; p < network.points(); p++) {
            places.place(p, new Point(random.nextDouble(), random.nextDouble()));
            places.setHeight(p, random.nextDouble());
        }
        return places;
    }

    /** The movements that no observation and no datum stops, one array over the unknowns each, of length 1. */
    private List<double[]> freeMovements() {
        int n = network.unknowns();
        DMatrixRMaj matrix = new DMatrixRMaj(n, n);
        DesignRow row = new DesignRow(network);
        for (Observation observation : network.observations()) {
            row.of(observation, at);
            double square = 0;
            for (int k = 0; k < row.count(); k++) {
                square += row.value(k) * row.value(k);
            }
            addSquare(matrix, row, 1 / square);
        }
        DMatrixRMaj datum = DatumMovements.ofAllPoints(network, at);
        for (int i = 0; network.datumDefect() > 0 && i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < datum.numCols; k++) {
                    matrix.add(i, j, datum.get(i, k) * datum.get(j, k));
                }
            }
        }
        return n == 0 || isClearlyRegular(matrix) ? List.of() : nullSpace(matrix);
    }

    private static void addSquare(DMatrixRMaj matrix, DesignRow row, double weight) {
        for (int i = 0; i < row.count(); i++) {
            for (int j = 0; j < row.count(); j++) {
                matrix.add(row.unknown(i), row.unknown(j), weight * row.value(i) * row.value(j));
            }
        }
    }

    private static boolean isClearlyRegular(DMatrixRMaj matrix) {
        CholeskyDecomposition_F64<DMatrixRMaj> factor = DecompositionFactory_DDRM.chol(matrix.numRows, true);
        if (!factor.decompose(matrix.copy())) {
            return false;
        }
        DMatrixRMaj lower = factor.getT(null);
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < matrix.numRows; i++) {
            least = Math.min(least, lower.get(i, i));
            most = Math.max(most, lower.get(i, i));
        }
        return least > DOUBTFUL * most;
    }

    private static List<double[]> nullSpace(DMatrixRMaj matrix) {
        int n = matrix.numRows;
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
        eigen.decompose(matrix.copy());
        double most = 0;
        for (int k = 0; k < n; k++) {
            most = Math.max(most, eigen.getEigenvalue(k).getReal());
        }
        List<double[]> free = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            if (eigen.getEigenvalue(k).getReal() < FREE * most) {
                free.add(eigen.getEigenVector(k).getData().clone());
            }
        }
        return free;
    }

    /** How a length between two points changes along each free movement. */
    private double[] change(int a, int b) {
        DesignRow row = new DesignRow(network).of(new Observation.Distance(a, b, 1, 1), at);
        double[] change = new double[movements.size()];
        for (int m = 0; m < change.length; m++) {
            for (int k = 0; k < row.count(); k++) {
                change[m] += row.value(k) * movements.get(m)[row.unknown(k)];
            }
        }
        return change;
    }

    private double reach(int a, int b) {
        double square = 0;
        for (double c : change(a, b)) {
            square += c * c;
        }
        return Math.sqrt(square);
    }

    /** Takes away the movement along which a length changes: the rest is turned square to it (Householder). */
    private void hold(int a, int b) {
        double[] change = change(a, b);
        int size = change.length;
        double length = reach(a, b);
        double[] mirror = change.clone();
        mirror[0] += mirror[0] < 0 ? -length : length;
        double square = 0;
        for (double value : mirror) {
            square += value * value;
        }
        List<double[]> rest = new ArrayList<>();
        for (int m = 1; m < size; m++) {
            double[] movement = movements.get(m).clone();
            double factor = 2 * mirror[m] / square;
            for (int k = 0; k < size; k++) {
                for (int u = 0; u < movement.length; u++) {
                    movement[u] -= factor * mirror[k] * movements.get(k)[u];
                }
            }
            rest.add(movement);
        }
        movements = rest;
    }

    /** Points of the plan outside the largest part that is stiff in itself. */
    private List<Integer> loose() {
        List<Integer> points = new ArrayList<>();
        for (int p = 0; p < network.points(); p++) {
            if (network.inPlan(p)) {
                points.add(p);
            }
        }
        if (movements.isEmpty()) {
            return List.of();
        }
        List<Integer> stiff = List.of();
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                int a = points.get(i);
                int b = points.get(j);
                if (reach(a, b) < STILL && !(stiff.contains(a) && stiff.contains(b))) {
                    List<Integer> part = points.stream()
                            .filter(p -> p == a || p == b || (reach(a, p) < STILL && reach(b, p) < STILL))
                            .toList();
                    stiff = part.size() > stiff.size() ? part : stiff;
                }
            }
        }
        if (stiff.isEmpty() && !points.isEmpty()) {
            stiff = List.of(points.get(0));
        }
        List<Integer> rest = new ArrayList<>(points);
        rest.removeAll(stiff);
        return rest;
    }

    /** A length that holds something: an edge of the border if one helps, else between corners, else the stiffest. */
    private Optional<Ends> bestLength(List<Integer> loose) {
        Ends best = null;
        double most = 0;
        for (int a = 0; a < network.points(); a++) {
            for (int b = a + 1; b < network.points(); b++) {
                if (!network.inPlan(a) || !network.inPlan(b)) {
                    continue;
                }
                double reach = reach(a, b);
                if (reach < STILL) {
                    continue;
                }
                boolean joins = loose.contains(a) != loose.contains(b);
                double score = Math.min(reach, 1) + rank(a, b) + (joins ? 10 : 0);
                if (score > most) {
                    most = score;
                    best = new Ends(a, b);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private int rank(int a, int b) {
        int i = order.corners().indexOf(a);
        int j = order.corners().indexOf(b);
        if (i < 0 || j < 0) {
            return i < 0 && j < 0 ? 0 : 2;
        }
        int apart = Math.abs(i - j);
        boolean edge = apart == 1 || (order.closed() && apart == order.corners().size() - 1);
        return edge ? 6 : 4;
    }
}
