package borderwright.engine.linear;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Where every column of a linear program stands: in the basis, with its value, or at one of its bounds. */
public final class Basis {
    static final int AT_LOWER = -1;
    static final int AT_UPPER = -2;

    final ColumnStore store;
    final int rows;
    /** Least value of each row. */
    final double[] rhs;
    /** Column that is basic in each row, and its value. */
    final int[] column;

    final double[] value;
    /** Price of each row. */
    final double[] price;
    /** The last column solved by {@link #transform}. */
    final double[] alpha;

    /** Where a column stands that is not basic. */
    enum Bound {
        LOWER,
        UPPER
    }

    private final BasisFactors factors;
    private final double[] rowVector;
    private int[] place = {};
    private final int firstArtificial;

    /**
     * A basis of columns that are each 1 or -1 in one row.
     *
     * @param start column for each row
     * @param firstArtificial first of the columns that are 1 in one row, a column for each row
     */
    Basis(ColumnStore store, double[] rhs, int[] start, int firstArtificial) {
        this.store = store;
        this.rows = rhs.length;
        this.rhs = rhs;
        this.column = start;
        this.firstArtificial = firstArtificial;
        this.value = new double[rows];
        this.price = new double[rows];
        this.alpha = new double[rows];
        this.rowVector = new double[rows];
        this.factors = new BasisFactors(rows);
        grow();
        for (int r = 0; r < rows; r++) {
            place[start[r]] = r;
        }
        refactor();
    }

    /** Makes room for columns added to the store; they stand at their lower bounds. */
    void grow() {
        if (place.length < store.columns()) {
            int before = place.length;
            place = Arrays.copyOf(place, Math.max(2 * before, store.columns()));
            Arrays.fill(place, before, place.length, AT_LOWER);
        }
    }

    /** Row in which a column is basic, or {@link #AT_LOWER}, {@link #AT_UPPER}. */
    int place(int j) {
        return place[j];
    }

    void setPlace(int j, int newPlace) {
        place[j] = newPlace;
    }

    double valueOf(int j) {
        int p = place[j];
        return p >= 0 ? value[p] : p == AT_UPPER ? store.upper(j) : store.lower(j);
    }

    double reducedCost(int j) {
        return store.cost(j) - store.times(price, j);
    }

    double lowerIn(int r) {
        return store.lower(column[r]);
    }

    double upperIn(int r) {
        return store.upper(column[r]);
    }

    /** {@link #alpha} = inverse x column. */
    void transform(int j) {
        Arrays.fill(alpha, 0);
        store.addTo(alpha, j, 1);
        factors.solve(alpha);
    }

    /** {@link #alpha} = column {@code r} of the inverse. */
    void transformUnit(int r) {
        Arrays.fill(alpha, 0);
        alpha[r] = 1;
        factors.solve(alpha);
    }

    /** Row {@code r} of the inverse; overwritten by the next call. */
    double[] row(int r) {
        Arrays.fill(rowVector, 0);
        rowVector[r] = 1;
        factors.solveTransposed(rowVector);
        return rowVector;
    }

    /** Adds so many times {@link #alpha} to all values. */
    void move(double times) {
        for (int i = 0; i < rows; i++) {
            value[i] += times * alpha[i];
        }
    }

    /**
     * Puts column {@code entering} in the place of the one in row {@code r}.
     *
     * @param inverseRow row {@code r} of the inverse before the exchange
     * @param left the bound at which the other column stands from now on
     * @param enteringReduced reduced cost of the entering column
     */
    void exchange(int r, int entering, double newValue, Bound left, double enteringReduced, double[] inverseRow) {
        double times = enteringReduced / alpha[r];
        for (int k = 0; k < rows; k++) {
            price[k] += times * inverseRow[k];
        }
        place[column[r]] = left == Bound.UPPER ? AT_UPPER : AT_LOWER;
        column[r] = entering;
        place[entering] = r;
        value[r] = newValue;
        factors.exchange(r, alpha);
    }

    /** Which columns are basic, which stand at their upper bounds and which are awake, to come back to. */
    public static final class Stand {
        private final int[] basic;
        private final int[] atUpper;
        private final int[] awake;
        private final int columns;

        private Stand(int[] basic, int[] atUpper, int[] awake, int columns) {
            this.basic = basic;
            this.atUpper = atUpper;
            this.awake = awake;
            this.columns = columns;
        }
    }

    Stand stand() {
        int[] atUpper = IntStream.range(0, store.columns())
                .filter(j -> place[j] == AT_UPPER)
                .toArray();
        return new Stand(column.clone(), atUpper, store.copyOfAwake(), store.columns());
    }

    /** Goes back to an earlier basis; bounds and least values are those of now. */
    void takeUp(Stand stand) {
        Arrays.fill(place, AT_LOWER);
        store.wakeOnly(stand.awake, stand.columns);
        for (int j : stand.atUpper) {
            place[j] = AT_UPPER;
        }
        for (int r = 0; r < rows; r++) {
            column[r] = stand.basic[r];
        }
        refactor();
    }

    /** Numbers that one solution passes over. */
    int numbers() {
        return factors.numbers();
    }

    /** Factors anew where that is due; whether it did. */
    boolean refactorIfStale() {
        if (!factors.isStale()) {
            return false;
        }
        refactor();
        return true;
    }

    /** Factors, values and prices anew. */
    void refactor() {
        for (int j : column) {
            place[j] = AT_LOWER;
        }
        factors.factor(store, column);
        for (int r = 0; r < rows; r++) {
            if (column[r] < 0) {
                column[r] = firstArtificial + r;
            }
            place[column[r]] = r;
        }
        System.arraycopy(rhs, 0, value, 0, rows);
        for (int j = 0; j < store.columns(); j++) {
            double x = place[j] >= 0 ? 0 : valueOf(j);
            if (x != 0) {
                store.addTo(value, j, -x);
            }
        }
        factors.solve(value);
        for (int r = 0; r < rows; r++) {
            price[r] = store.cost(column[r]);
        }
        factors.solveTransposed(price);
    }
}
