package borderwright.engine.linear;

import borderwright.engine.effort.Budget;
import java.util.Arrays;

/**
 * A linear program, at least {@code rhs} in every row, columns between bounds, at the least cost: revised simplex on a
 * factored basis, primal for new columns, dual for new bounds.
 *
 * <p>Its numbers are floating point and prove nothing; column generation turns its row prices into whole numbers and checks
 * them exactly.
 *
 * <p>Each row has a surplus column and an artificial column of high cost, so that there is always a basis and the dual
 * method never runs dry.
 */
public final class LinearProgram {
    final int rows;
    private final double[] rhs;
    private final ColumnStore store = new ColumnStore();
    private final Basis basis;
    private final PrimalSimplex primal;
    private final DualSimplex dual;

    /**
     * A program without columns of its own.
     *
     * @param least least value of each row
     * @param artificialCost cost of each row's artificial column
     */
    public LinearProgram(double[] least, double[] artificialCost) {
        this.rows = least.length;
        this.rhs = least.clone();
        int[] start = new int[rows];
        for (int r = 0; r < rows; r++) {
            store.add(0, new int[] {r}, new double[] {-1}, Double.POSITIVE_INFINITY);
        }
        for (int r = 0; r < rows; r++) {
            store.add(artificialCost[r], new int[] {r}, new double[] {1}, Double.POSITIVE_INFINITY);
            start[r] = rhs[r] <= 0 ? r : rows + r;
        }
        this.basis = new Basis(store, rhs, start, rows);
        this.primal = new PrimalSimplex(basis);
        this.dual = new DualSimplex(basis);
    }

    /** Adds a column at its lower bound 0; its number. */
    public int add(double columnCost, int[] columnRows, double[] columnEntries, double columnUpper) {
        int column = store.add(columnCost, columnRows, columnEntries, columnUpper);
        basis.grow();
        return column;
    }

    public int columns() {
        return store.columns();
    }

    /** Columns that are not passed over. */
    public int awakes() {
        return store.awakes();
    }

    /**
     * Passes over columns from {@code from} on that stand at 0 and cost more than they gain by more than a limit.
     *
     * @param limit reduced cost
     */
    public void sleep(int from, double limit) {
        store.sleep(j ->
                j >= from && basis.place(j) == Basis.AT_LOWER && store.lower(j) == 0 && basis.reducedCost(j) > limit);
    }

    /** Passes over columns from {@code from} on that stand at 0, but for about so many that cost least beyond their gain. */
    public void keepCheapest(int from, int keep) {
        double[] reduced = new double[store.awakes()];
        int n = 0;
        for (int k = 0; k < reduced.length; k++) {
            int j = store.awake(k);
            if (j >= from && basis.place(j) == Basis.AT_LOWER) {
                reduced[n++] = basis.reducedCost(j);
            }
        }
        if (n > keep) {
            Arrays.sort(reduced, 0, n);
            sleep(from, Math.max(1e-7, reduced[keep]));
        }
    }

    /** Passes over columns from {@code from} on that stand at 0 and have an entry above what is required of its row. */
    public void sleepExcessive(int from) {
        store.sleep(j -> j >= from && basis.place(j) == Basis.AT_LOWER && store.lower(j) == 0 && store.exceeds(j, rhs));
    }

    /** Takes a column up again; whether it was passed over. */
    public boolean wake(int column) {
        return store.wake(column);
    }

    /** The basis as it is, to come back to by {@link #takeUp}. */
    public Basis.Stand stand() {
        return basis.stand();
    }

    /** Goes back to an earlier basis; {@link #dual} mends it where bounds or least values are others by now. */
    public void takeUp(Basis.Stand stand) {
        basis.takeUp(stand);
    }

    public double price(int r) {
        return basis.price[r];
    }

    public double value(int column) {
        return basis.valueOf(column);
    }

    public double lower(int column) {
        return store.lower(column);
    }

    public double upper(int column) {
        return store.upper(column);
    }

    public double objective() {
        double sum = 0;
        for (int k = 0; k < store.awakes(); k++) {
            int j = store.awake(k);
            double x = basis.valueOf(j);
            sum += x == 0 ? 0 : store.cost(j) * x;
        }
        return sum;
    }

    /** Sum of all artificial columns: above 0 while some row is not met. */
    public double unmet() {
        double sum = 0;
        for (int r = 0; r < rows; r++) {
            sum += basis.valueOf(rows + r);
        }
        return sum;
    }

    /** Changes the bounds of a column; the basis stays, to be mended by {@link #dual}. */
    public void bound(int column, double newLower, double newUpper) {
        double before = basis.valueOf(column);
        store.bound(column, newLower, newUpper);
        if (basis.place(column) >= 0) {
            return;
        }
        boolean high = newUpper < Double.POSITIVE_INFINITY && basis.reducedCost(column) < 0;
        basis.setPlace(column, high ? Basis.AT_UPPER : Basis.AT_LOWER);
        double change = basis.valueOf(column) - before;
        if (change != 0) {
            basis.transform(column);
            basis.move(-change);
        }
    }

    /** Changes the least value of a row. */
    public void require(int r, double least) {
        double change = least - rhs[r];
        rhs[r] = least;
        if (change != 0) {
            basis.transformUnit(r);
            basis.move(change);
        }
    }

    /** Primal simplex from a feasible basis; whether it came to the end. */
    public boolean primal(Budget budget) {
        return primal.run(budget);
    }

    /**
     * Dual simplex from a basis whose prices are right.
     *
     * @param cutoff stop once the objective is above it
     * @return whether every row is met within the cutoff
     */
    public boolean dual(double cutoff, Budget budget) {
        return dual.run(cutoff, objective(), budget);
    }
}
