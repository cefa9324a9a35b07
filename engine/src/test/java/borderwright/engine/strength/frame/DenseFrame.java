package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.ejml.simple.SimpleMatrix;

/**
 * A slow second opinion on a frame: the textbook's 12 x 12 matrices turned by a full transformation matrix, loads shared
 * out by numerical integration of the shape functions, one dense matrix solved from scratch for every set of contacts, and
 * contacts found by principal pivoting from all open instead of by Newton steps on the energy from all closed.
 */
public final class DenseFrame {
    /** Abscissae and weights of Gauss's rule with five points on (-1, 1). */
    private static final double[][] GAUSS = {
        {0, 0.568888888888888889},
        {-0.538469310105683091, 0.478628670499366468},
        {0.538469310105683091, 0.478628670499366468},
        {-0.906179845938663993, 0.236926885056189088},
        {0.906179845938663993, 0.236926885056189088}
    };

    private final Frame frame;
    private final UnknownScales scales;
    private final SimpleMatrix elastic;
    private final SimpleMatrix load;
    private final List<Integer> contacts = new ArrayList<>();
    private final List<SimpleMatrix> rows = new ArrayList<>();
    private final List<Integer> free = new ArrayList<>();
    private final int size;

    private DenseFrame(Frame frame, Loads loads, UnknownScales scales) {
        this.frame = frame;
        this.scales = scales;
        size = 6 * frame.places.size();
        elastic = new SimpleMatrix(size, size);
        load = new SimpleMatrix(size, 1);
        for (int m = 0; m < frame.members.size(); m++) {
            addMember(m, loads.of(m));
        }
        for (Loads.OnNode onNode : loads.onNodes) {
            add(load, 6 * onNode.node() + onNode.freedom().index(), 0, onNode.value());
        }
        for (int s = 0; s < frame.springs.size(); s++) {
            SimpleMatrix row = stretch(frame.springs.get(s));
            if (frame.springs.get(s).law().kind() == SpringLaw.Kind.CONTACT) {
                contacts.add(s);
                rows.add(row);
            } else {
                addOuter(elastic, row, frame.springs.get(s).stiffness() * scales.ofSpring(s));
            }
        }
        for (int i = 0; i < size; i++) {
            if (frame.numbering.equation[i] >= 0) {
                free.add(i);
                add(elastic, i, i, frame.loose[frame.numbering.equation[i]]);
            }
        }
    }

    /** All six displacements of every node, held ones nothing. */
    public static double[] solve(Frame frame, Loads loads, UnknownScales scales) {
        return new DenseFrame(frame, loads, scales).pivot();
    }

    /** Number of nodes. */
    public static int nodes(Frame frame) {
        return frame.places.size();
    }

    /** Where a node stands. */
    public static Vector place(Frame frame, int node) {
        return frame.places.get(node);
    }

    private double[] pivot() {
        boolean[] closed = new boolean[contacts.size()];
        SimpleMatrix open = freePart(elastic);
        SimpleMatrix force = freePart(load);
        List<SimpleMatrix> stretches = rows.stream().map(this::freePart).toList();
        for (int step = 0; step < 400; step++) {
            SimpleMatrix k = open.copy();
            for (int c = 0; c < closed.length; c++) {
                int s = contacts.get(c);
                if (closed[c]) {
                    addOuter(k, stretches.get(c), frame.springs.get(s).stiffness() * scales.ofSpring(s));
                }
            }
            SimpleMatrix u = solved(k, force);
            List<Integer> wrong = new ArrayList<>();
            for (int c = 0; c < closed.length; c++) {
                double stretch = stretches.get(c).dot(u);
                if (closed[c] ? stretch > 1e-10 : stretch < -1e-10) {
                    wrong.add(c);
                }
            }
            if (wrong.isEmpty()) {
                double[] all = new double[size];
                for (int i = 0; i < free.size(); i++) {
                    all[free.get(i)] = u.get(i, 0);
                }
                return all;
            }
            // All at once while that gets on; one at a time, the first first, where it may go round in circles.
            for (int c : step < 20 ? wrong : wrong.subList(0, 1)) {
                closed[c] = !closed[c];
            }
        }
        throw new IllegalStateException("no set of contacts found");
    }

    /** By Cholesky's factors, half the work of Gauss's: the matrix of an elastic frame is symmetric and positive definite. */
    private static SimpleMatrix solved(SimpleMatrix k, SimpleMatrix force) {
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(k.getNumRows());
        DMatrixRMaj u = new DMatrixRMaj(k.getNumRows(), 1);
        if (!solver.setA(k.getDDRM())) {
            throw new IllegalStateException("the matrix is not positive definite");
        }
        solver.solve(force.getDDRM(), u);
        return SimpleMatrix.wrap(u);
    }

    /** What of a matrix or a column belongs to free displacements. */
    private SimpleMatrix freePart(SimpleMatrix whole) {
        boolean column = whole.getNumCols() == 1;
        SimpleMatrix part = new SimpleMatrix(free.size(), column ? 1 : free.size());
        for (int i = 0; i < free.size(); i++) {
            for (int j = 0; j < part.getNumCols(); j++) {
                part.set(i, j, whole.get(free.get(i), column ? 0 : free.get(j)));
            }
        }
        return part;
    }

    private void addMember(int index, List<Loads.OnMember> loads) {
        Member member = frame.members.get(index);
        double l = member.length();
        JointRigidity r = member.rigidity();
        SimpleMatrix k = new SimpleMatrix(12, 12);
        double[][] axial = {{1, -1}, {-1, 1}};
        int[] stretch = {0, 6};
        int[] twist = {3, 9};
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                add(k, stretch[i], stretch[j], r.axial() / l * axial[i][j]);
                add(k, twist[i], twist[j], r.torsion() / l * axial[i][j]);
            }
        }
        double[][] bend = {
            {12, 6 * l, -12, 6 * l},
            {6 * l, 4 * l * l, -6 * l, 2 * l * l},
            {-12, -6 * l, 12, -6 * l},
            {6 * l, 2 * l * l, -6 * l, 4 * l * l}
        };
        int[] aboutZ = {1, 5, 7, 11};
        int[] aboutY = {2, 4, 8, 10};
        double[] sign = {1, -1, 1, -1};
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                add(k, aboutZ[i], aboutZ[j], r.aboutZ() / (l * l * l) * bend[i][j]);
                add(k, aboutY[i], aboutY[j], r.aboutY() / (l * l * l) * bend[i][j] * sign[i] * sign[j]);
            }
        }
        SimpleMatrix turn = new SimpleMatrix(12, 12);
        Vector[] axes = {member.x(), member.y(), member.z()};
        for (int block = 0; block < 4; block++) {
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    turn.set(3 * block + i, 3 * block + j, axes[i].component(j));
                }
            }
        }
        SimpleMatrix global =
                turn.transpose().mult(k.scale(scales.ofMember(index))).mult(turn);
        SimpleMatrix forces = turn.transpose().mult(shared(member, loads));
        for (int i = 0; i < 12; i++) {
            add(load, LoadVector.index(member, i), 0, forces.get(i, 0));
            for (int j = 0; j < 12; j++) {
                add(elastic, LoadVector.index(member, i), LoadVector.index(member, j), global.get(i, j));
            }
        }
    }

    private static SimpleMatrix shared(Member member, List<Loads.OnMember> loads) {
        SimpleMatrix forces = new SimpleMatrix(12, 1);
        for (Loads.OnMember one : loads) {
            Vector local = member.toLocal(one.direction());
            if (one.isPoint()) {
                addShare(forces, member.length(), one.from(), local.times(one.atFrom()));
                continue;
            }
            double half = (one.to() - one.from()) / 2;
            for (double[] point : GAUSS) {
                double share = (1 + point[0]) / 2;
                double at = one.from() + 2 * half * share;
                double perLength = one.atFrom() + share * (one.atTo() - one.atFrom());
                addShare(forces, member.length(), at, local.times(perLength * half * point[1]));
            }
        }
        return forces;
    }

    private static void addShare(SimpleMatrix forces, double l, double at, Vector force) {
        double x = at / l;
        double[] shape = {
            1 - 3 * x * x + 2 * x * x * x, l * x * (1 - x) * (1 - x), 3 * x * x - 2 * x * x * x, l * x * x * (x - 1)
        };
        add(forces, 0, 0, (1 - x) * force.x());
        add(forces, 6, 0, x * force.x());
        int[] y = {1, 5, 7, 11};
        int[] z = {2, 4, 8, 10};
        double[] sign = {1, -1, 1, -1};
        for (int i = 0; i < 4; i++) {
            add(forces, y[i], 0, shape[i] * force.y());
            add(forces, z[i], 0, sign[i] * shape[i] * force.z());
        }
    }

    private SimpleMatrix stretch(Spring spring) {
        SimpleMatrix row = new SimpleMatrix(size, 1);
        put(row, spring.second(), spring.direction(), spring.turning(), 1);
        put(row, spring.first(), spring.direction(), spring.turning(), -1);
        return row;
    }

    private static void put(SimpleMatrix row, Spring.Place place, Vector direction, boolean turning, double sign) {
        if (place.node() < 0) {
            return;
        }
        Vector moment = turning ? direction : place.arm().cross(direction);
        for (int i = 0; i < 3; i++) {
            add(row, 6 * place.node() + i, 0, turning ? 0 : sign * direction.component(i));
            add(row, 6 * place.node() + 3 + i, 0, sign * moment.component(i));
        }
    }

    private static void addOuter(SimpleMatrix k, SimpleMatrix row, double stiffness) {
        List<Integer> filled = new ArrayList<>();
        for (int i = 0; i < row.getNumRows(); i++) {
            if (row.get(i, 0) != 0) {
                filled.add(i);
            }
        }
        for (int i : filled) {
            for (int j : filled) {
                add(k, i, j, stiffness * row.get(i, 0) * row.get(j, 0));
            }
        }
    }

    private static void add(SimpleMatrix matrix, int i, int j, double value) {
        matrix.set(i, j, matrix.get(i, j) + value);
    }
}
