package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import java.util.Arrays;

/**
 * A linear program, at least {@code rhs} in every row, columns between bounds, at the least cost: revised simplex with
 * an explicit inverse, primal for new columns, dual for new bounds.
 *
 * <p>Its numbers are floating point and prove nothing; {@link Master} turns its row prices into whole numbers and checks
 * them exactly.
 *
 * <p>Each row has a surplus column and an artificial column of high cost, so that there is always a basis and the dual
 * method never runs dry.
 */
final class LinearProgram {
    private static final double ZERO = 1e-9;
    private static final double PIVOT = 1e-8;
    private static final int AT_LOWER = -1;
    private static final int AT_UPPER = -2;

    final int rows;
    private final double[] rhs;
    private int columns;
    private int[][] row = new int[64][];
    private double[][] entry = new double[64][];
    private double[] cost = new double[64];
    private double[] lower = new double[64];
    private double[] upper = new double[64];
    /** Row in which a column is basic, or {@link #AT_LOWER}, {@link #AT_UPPER}. */
    private int[] place = new int[64];

    private double[] reduced = new double[64];
    private final int[] basis;
    private final double[] basic;
    private final double[][] inverse;
    private final double[] price;
    private final double[] alpha;
    private final int[] nonZero;
    private int pivotsSinceFactor;
    private boolean reducedValid;

    /**
     * A program without columns of its own.
     *
     * @param rhs least value of each row
     * @param artificialCost cost of each row's artificial column
     */
    LinearProgram(double[] rhs, double[] artificialCost) {
        this.rows = rhs.length;
        this.rhs = rhs.clone();
        this.basis = new int[rows];
        this.basic = new double[rows];
        this.inverse = new double[rows][rows];
        this.price = new double[rows];
        this.alpha = new double[rows];
        this.nonZero = new int[rows];
        for (int r = 0; r < rows; r++) {
            add(0, new int[] {r}, new double[] {-1}, Double.POSITIVE_INFINITY);
        }
        for (int r = 0; r < rows; r++) {
            add(artificialCost[r], new int[] {r}, new double[] {1}, Double.POSITIVE_INFINITY);
        }
        for (int r = 0; r < rows; r++) {
            boolean covered = rhs[r] <= 0;
            basis[r] = covered ? r : rows + r;
            place[basis[r]] = r;
            inverse[r][r] = covered ? -1 : 1;
            basic[r] = Math.abs(rhs[r]);
            price[r] = covered ? 0 : artificialCost[r];
        }
    }

    /** Adds a column at its lower bound 0; its number. */
    int add(double columnCost, int[] columnRows, double[] columnEntries, double columnUpper) {
        if (columns == cost.length) {
            int size = 2 * columns;
            row = Arrays.copyOf(row, size);
            entry = Arrays.copyOf(entry, size);
            cost = Arrays.copyOf(cost, size);
            lower = Arrays.copyOf(lower, size);
            upper = Arrays.copyOf(upper, size);
            place = Arrays.copyOf(place, size);
            reduced = Arrays.copyOf(reduced, size);
        }
        row[columns] = columnRows;
        entry[columns] = columnEntries;
        cost[columns] = columnCost;
        lower[columns] = 0;
        upper[columns] = columnUpper;
        place[columns] = AT_LOWER;
        reducedValid = false;
        return columns++;
    }

    double price(int r) {
        return price[r];
    }

    double value(int column) {
        return place[column] >= 0 ? basic[place[column]] : place[column] == AT_UPPER ? upper[column] : lower[column];
    }

    double lower(int column) {
        return lower[column];
    }

    double upper(int column) {
        return upper[column];
    }

    double objective() {
        double sum = 0;
        for (int j = 0; j < columns; j++) {
            double x = value(j);
            sum += x == 0 ? 0 : cost[j] * x;
        }
        return sum;
    }

    /** Sum of all artificial columns: above 0 while some row is not met. */
    double unmet() {
        double sum = 0;
        for (int r = 0; r < rows; r++) {
            sum += value(rows + r);
        }
        return sum;
    }

    /** Changes the bounds of a column; the basis stays, to be mended by {@link #dual}. */
    void bound(int column, double newLower, double newUpper) {
        double before = value(column);
        lower[column] = newLower;
        upper[column] = newUpper;
        if (place[column] >= 0) {
            return;
        }
        double d = reducedValid ? reduced[column] : reducedCost(column);
        place[column] = d < 0 && newUpper < Double.POSITIVE_INFINITY ? AT_UPPER : AT_LOWER;
        double change = value(column) - before;
        if (change != 0) {
            transform(column);
            for (int i = 0; i < rows; i++) {
                basic[i] -= change * alpha[i];
            }
        }
    }

    /** Changes the least value of a row. */
    void require(int r, double least) {
        double change = least - rhs[r];
        rhs[r] = least;
        if (change != 0) {
            for (int i = 0; i < rows; i++) {
                basic[i] += change * inverse[i][r];
            }
        }
    }

    private double reducedCost(int column) {
        double d = cost[column];
        int[] r = row[column];
        double[] a = entry[column];
        for (int k = 0; k < r.length; k++) {
            d -= price[r[k]] * a[k];
        }
        return d;
    }

    /** alpha = inverse x column. */
    private void transform(int column) {
        int[] r = row[column];
        double[] a = entry[column];
        for (int i = 0; i < rows; i++) {
            double[] inv = inverse[i];
            double sum = 0;
            for (int k = 0; k < r.length; k++) {
                sum += inv[r[k]] * a[k];
            }
            alpha[i] = sum;
        }
    }

    /** Primal simplex from a feasible basis; whether it came to the end. */
    boolean primal(Budget budget) {
        reducedValid = false;
        int stalled = 0;
        while (budget.spend((long) rows * rows / 2 + 8L * columns)) {
            refreshIfDue();
            int entering = -1;
            double best = ZERO;
            for (int j = 0; j < columns; j++) {
                if (place[j] >= 0 || lower[j] == upper[j]) {
                    continue;
                }
                double d = reducedCost(j);
                double gain = place[j] == AT_LOWER ? -d : d;
                if (gain > best) {
                    best = gain;
                    entering = j;
                    if (stalled > 200) {
                        break;
                    }
                }
            }
            if (entering < 0) {
                return true;
            }
            double step = primalStep(entering);
            stalled = step > ZERO ? 0 : stalled + 1;
        }
        return false;
    }

    private double primalStep(int entering) {
        double direction = place[entering] == AT_LOWER ? 1 : -1;
        transform(entering);
        double longest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            double a = direction * alpha[i];
            double room = a > PIVOT
                    ? basic[i] - lower[basis[i]] + ZERO
                    : a < -PIVOT ? upper[basis[i]] - basic[i] + ZERO : Double.POSITIVE_INFINITY;
            longest = Math.min(longest, room / Math.abs(a));
        }
        int leaving = -1;
        double size = 0;
        for (int i = 0; i < rows; i++) {
            double a = direction * alpha[i];
            if (Math.abs(a) > PIVOT && Math.abs(a) > size) {
                double room = a > 0 ? basic[i] - lower[basis[i]] : upper[basis[i]] - basic[i];
                if (room / Math.abs(a) <= longest) {
                    leaving = i;
                    size = Math.abs(a);
                }
            }
        }
        double step = leaving < 0
                ? longest
                : Math.max(
                        0,
                        (direction * alpha[leaving] > 0
                                        ? basic[leaving] - lower[basis[leaving]]
                                        : upper[basis[leaving]] - basic[leaving])
                                / size);
        double span = upper[entering] - lower[entering];
        if (span <= step) {
            for (int i = 0; i < rows; i++) {
                basic[i] -= direction * span * alpha[i];
            }
            place[entering] = place[entering] == AT_LOWER ? AT_UPPER : AT_LOWER;
            return span;
        }
        if (leaving < 0) {
            throw new IllegalStateException("a cost below zero has no end: column " + entering);
        }
        boolean toUpper = direction * alpha[leaving] < 0;
        double value = value(entering) + direction * step;
        for (int i = 0; i < rows; i++) {
            basic[i] -= direction * step * alpha[i];
        }
        exchange(leaving, entering, value, toUpper, reducedCost(entering));
        return step;
    }

    private void exchange(int leaving, int entering, double value, boolean toUpper, double enteringReduced) {
        place[basis[leaving]] = toUpper ? AT_UPPER : AT_LOWER;
        basis[leaving] = entering;
        place[entering] = leaving;
        basic[leaving] = value;
        pivot(leaving);
        double[] inv = inverse[leaving];
        for (int k = 0; k < rows; k++) {
            price[k] += enteringReduced * inv[k];
        }
        pivotsSinceFactor++;
    }

    /** Makes alpha the unit column of row {@code r}. */
    private void pivot(int r) {
        double[] pivotRow = inverse[r];
        double factor = 1 / alpha[r];
        int n = 0;
        for (int k = 0; k < rows; k++) {
            double v = pivotRow[k];
            if (Math.abs(v) < 1e-14) {
                pivotRow[k] = 0;
            } else {
                pivotRow[k] = v * factor;
                nonZero[n++] = k;
            }
        }
        boolean sparse = 4 * n < rows;
        for (int i = 0; i < rows; i++) {
            double a = alpha[i];
            if (i == r || Math.abs(a) < 1e-13) {
                continue;
            }
            double[] inv = inverse[i];
            if (sparse) {
                for (int t = 0; t < n; t++) {
                    inv[nonZero[t]] -= a * pivotRow[nonZero[t]];
                }
            } else {
                for (int k = 0; k < rows; k++) {
                    inv[k] -= a * pivotRow[k];
                }
            }
        }
    }

    private void refreshIfDue() {
        if (pivotsSinceFactor > 150 + rows) {
            factor();
        }
    }

    /** Builds the inverse, the basic values and the prices anew from the basis. */
    private void factor() {
        pivotsSinceFactor = 0;
        reducedValid = false;
        for (double[] inv : inverse) {
            Arrays.fill(inv, 0);
        }
        int[] old = basis.clone();
        boolean[] taken = new boolean[rows];
        for (int r = 0; r < rows; r++) {
            inverse[r][r] = 1;
        }
        Integer[] order = new Integer[rows];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> row[old[a]].length - row[old[b]].length);
        for (int o : order) {
            int column = old[o];
            transform(column);
            int best = -1;
            for (int i = 0; i < rows; i++) {
                if (!taken[i] && (best < 0 || Math.abs(alpha[i]) > Math.abs(alpha[best]))) {
                    best = i;
                }
            }
            if (Math.abs(alpha[best]) < 1e-10) {
                // The column has become dependent: the row's artificial column takes its place.
                place[column] = AT_LOWER;
                for (int i = 0; i < rows; i++) {
                    if (!taken[i] && place[rows + i] < 0) {
                        best = i;
                    }
                }
                column = rows + best;
                transform(column);
            }
            taken[best] = true;
            basis[best] = column;
            place[column] = best;
            pivot(best);
        }
        revalue();
    }

    private void revalue() {
        double[] rest = rhs.clone();
        for (int j = 0; j < columns; j++) {
            if (place[j] < 0) {
                double x = value(j);
                if (x != 0) {
                    for (int k = 0; k < row[j].length; k++) {
                        rest[row[j][k]] -= entry[j][k] * x;
                    }
                }
            }
        }
        Arrays.fill(price, 0);
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            double c = cost[basis[i]];
            for (int k = 0; k < rows; k++) {
                sum += inverse[i][k] * rest[k];
                price[k] += c * inverse[i][k];
            }
            basic[i] = sum;
        }
    }

    /**
     * Dual simplex from a basis whose prices are right.
     *
     * @param cutoff stop once the objective is above it
     * @return whether every row is met within the cutoff
     */
    boolean dual(double cutoff, Budget budget) {
        if (!reducedValid) {
            for (int j = 0; j < columns; j++) {
                reduced[j] = place[j] >= 0 ? 0 : reducedCost(j);
            }
            reducedValid = true;
        }
        double objective = objective();
        int guard = 50 * (rows + 10);
        while (budget.spend((long) rows * rows / 2 + 12L * columns) && guard-- > 0) {
            if (pivotsSinceFactor > 150 + rows) {
                factor();
                return dual(cutoff, budget);
            }
            if (objective > cutoff) {
                return false;
            }
            int leaving = mostViolated();
            if (leaving < 0) {
                return true;
            }
            boolean low = basic[leaving] < lower[basis[leaving]];
            double gap = low ? lower[basis[leaving]] - basic[leaving] : basic[leaving] - upper[basis[leaving]];
            int entering = dualEntering(leaving, low);
            if (entering < 0) {
                return false;
            }
            objective += dualStep(leaving, entering, low) * gap;
        }
        return false;
    }

    private int mostViolated() {
        int worst = -1;
        double most = 1e-7;
        for (int i = 0; i < rows; i++) {
            double over = Math.max(lower[basis[i]] - basic[i], basic[i] - upper[basis[i]]);
            if (over > most) {
                most = over;
                worst = i;
            }
        }
        return worst;
    }

    private double rowEntry(double[] inv, int column) {
        int[] r = row[column];
        double[] a = entry[column];
        double sum = 0;
        for (int k = 0; k < r.length; k++) {
            sum += inv[r[k]] * a[k];
        }
        return sum;
    }

    private double[] rowAlpha = new double[0];

    private int dualEntering(int leaving, boolean low) {
        double[] inv = inverse[leaving];
        if (rowAlpha.length < columns) {
            rowAlpha = new double[cost.length];
        }
        double sign = low ? -1 : 1;
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < columns; j++) {
            if (place[j] >= 0) {
                rowAlpha[j] = 0;
                continue;
            }
            double a = rowEntry(inv, j);
            rowAlpha[j] = a;
            if (lower[j] == upper[j]) {
                continue;
            }
            double directed = sign * a * (place[j] == AT_LOWER ? 1 : -1);
            if (directed > PIVOT) {
                least = Math.min(least, (Math.abs(reduced[j]) + ZERO) / directed);
            }
        }
        int best = -1;
        double size = 0;
        for (int j = 0; j < columns; j++) {
            if (place[j] >= 0 || lower[j] == upper[j]) {
                continue;
            }
            double directed = sign * rowAlpha[j] * (place[j] == AT_LOWER ? 1 : -1);
            if (directed > PIVOT && directed > size && Math.abs(reduced[j]) / directed <= least) {
                best = j;
                size = directed;
            }
        }
        return best;
    }

    /** Exchanges; the rise of the objective for each unit of violation. */
    private double dualStep(int leaving, int entering, boolean low) {
        transform(entering);
        double target = low ? lower[basis[leaving]] : upper[basis[leaving]];
        double step = (basic[leaving] - target) / alpha[leaving];
        double ratio = reduced[entering] / rowAlpha[entering];
        double value = value(entering) + step;
        for (int i = 0; i < rows; i++) {
            basic[i] -= step * alpha[i];
        }
        int out = basis[leaving];
        exchange(leaving, entering, value, !low, reduced[entering]);
        for (int j = 0; j < columns; j++) {
            if (place[j] < 0) {
                reduced[j] -= ratio * rowAlpha[j];
            }
        }
        reduced[entering] = 0;
        reduced[out] = -ratio;
        return Math.abs(ratio);
    }

    int columns() {
        return columns;
    }
}
