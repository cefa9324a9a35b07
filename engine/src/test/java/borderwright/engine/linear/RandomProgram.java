package borderwright.engine.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * A linear programme written out in full, for our solver and for a general one: least cost of columns between bounds, each
 * row at least its right-hand side, where a row may be left short at a price for each unit.
 */
final class RandomProgram {
    final double[] cost;
    final double[] lower;
    final double[] upper;
    final double[] least;
    final double shortage;
    /** Entries, a row of the array for each row of the programme. */
    final double[][] entry;

    private RandomProgram(int rows, int columns, double shortage) {
        this.cost = new double[columns];
        this.lower = new double[columns];
        this.upper = new double[columns];
        this.least = new double[rows];
        this.entry = new double[rows][columns];
        this.shortage = shortage;
        Arrays.fill(upper, Double.POSITIVE_INFINITY);
    }

    /** Small whole numbers, about half of the entries zero, some columns with an upper bound and some that pay for being used. */
    static RandomProgram of(SplittableRandom random, int rows, int columns) {
        RandomProgram p = new RandomProgram(rows, columns, 50);
        for (int r = 0; r < rows; r++) {
            p.least[r] = random.nextInt(-4, 12);
        }
        for (int j = 0; j < columns; j++) {
            p.cost[j] = random.nextInt(-3, 12);
            if (p.cost[j] < 0 || random.nextInt(3) == 0) {
                p.upper[j] = random.nextInt(0, 8);
            }
            for (int r = 0; r < rows; r++) {
                p.entry[r][j] = random.nextBoolean() ? 0 : random.nextInt(-2, 6);
            }
        }
        return p;
    }

    /**
     * Entries of 0 and 1, equal costs, equal right-hand sides and rows that stand twice: at every corner many columns may enter
     * for no gain, and many bases belong to one corner.
     */
    static RandomProgram degenerate(SplittableRandom random, int rows, int columns) {
        RandomProgram p = new RandomProgram(rows, columns, 20);
        Arrays.fill(p.cost, 1);
        for (int r = 0; r < rows; r++) {
            p.least[r] = random.nextInt(2);
            for (int j = 0; j < columns; j++) {
                p.entry[r][j] = random.nextInt(3) == 0 ? 1 : 0;
            }
            if (r > 0 && random.nextInt(3) == 0) {
                p.entry[r] = p.entry[r - 1].clone();
                p.least[r] = p.least[r - 1];
            }
        }
        return p;
    }

    int rows() {
        return least.length;
    }

    int columns() {
        return cost.length;
    }

    /** Our programme with the columns from {@code from} up to, not including, {@code to}. */
    LinearProgram program(int to) {
        double[] artificial = new double[rows()];
        Arrays.fill(artificial, shortage);
        LinearProgram program = new LinearProgram(least, artificial);
        for (int j = 0; j < to; j++) {
            addTo(program, j);
        }
        return program;
    }

    /** Adds a column; its number there. */
    int addTo(LinearProgram program, int j) {
        int[] row = IntStream.range(0, rows()).filter(r -> entry[r][j] != 0).toArray();
        double[] value = Arrays.stream(row).mapToDouble(r -> entry[r][j]).toArray();
        return program.add(cost[j], row, value, upper[j]);
    }

    /** Number in our programme of the first column of these. */
    int first() {
        return 2 * rows();
    }

    /** The least cost by the general solver. */
    double optimum() {
        int columns = columns();
        double[] objective = Arrays.copyOf(cost, columns + rows());
        Arrays.fill(objective, columns, objective.length, shortage);
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int r = 0; r < rows(); r++) {
            double[] of = Arrays.copyOf(entry[r], columns + rows());
            of[columns + r] = 1;
            constraints.add(new LinearConstraint(of, Relationship.GEQ, least[r]));
        }
        for (int j = 0; j < columns; j++) {
            double[] of = new double[columns + rows()];
            of[j] = 1;
            if (lower[j] > 0) {
                constraints.add(new LinearConstraint(of, Relationship.GEQ, lower[j]));
            }
            if (upper[j] < Double.POSITIVE_INFINITY) {
                constraints.add(new LinearConstraint(of, Relationship.LEQ, upper[j]));
            }
        }
        return new SimplexSolver()
                .optimize(
                        new LinearObjectiveFunction(objective, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }
}
