package borderwright.engine.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/** Sparse factors against the dense solution of the same equations. */
class BasisFactorsTest {
    private static final int ROWS = 25;

    private static ColumnStore columns(SplittableRandom random, int count) {
        ColumnStore store = new ColumnStore();
        for (int j = 0; j < count; j++) {
            int own = j % ROWS;
            int[] row = IntStream.range(0, ROWS)
                    .filter(r -> r == own || random.nextInt(5) == 0)
                    .toArray();
            double[] value = Arrays.stream(row)
                    .mapToDouble(r -> (r == own ? 6 : 0) + random.nextInt(1, 4))
                    .toArray();
            store.add(0, row, value, 1);
        }
        return store;
    }

    private static SimpleMatrix dense(ColumnStore store, int[] basis) {
        SimpleMatrix matrix = new SimpleMatrix(ROWS, ROWS);
        for (int k = 0; k < ROWS; k++) {
            double[] column = new double[ROWS];
            store.addTo(column, basis[k], 1);
            matrix.setColumn(k, 0, column);
        }
        return matrix;
    }

    private static void assertSolves(BasisFactors factors, SimpleMatrix basis, SplittableRandom random, String seed) {
        double[] right = random.doubles(ROWS, -5, 5).toArray();
        double[] x = right.clone();
        factors.solve(x);
        double[] back = basis.mult(new SimpleMatrix(ROWS, 1, true, x)).getDDRM().getData();
        assertThat(back).as(seed).containsExactly(right, within(1e-7));
        double[] y = right.clone();
        factors.solveTransposed(y);
        double[] across = basis.transpose()
                .mult(new SimpleMatrix(ROWS, 1, true, y))
                .getDDRM()
                .getData();
        assertThat(across).as(seed).containsExactly(right, within(1e-7));
    }

    @Test
    void factorsSolveAfterEveryExchangeAndAnew() {
        for (long seed = 0; seed < 20; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            ColumnStore store = columns(random, 8 * ROWS);
            int[] basis = IntStream.range(0, ROWS).toArray();
            BasisFactors factors = new BasisFactors(ROWS);
            factors.factor(store, basis);
            assertSolves(factors, dense(store, basis), random, "seed " + seed);
            for (int j = ROWS; j < store.columns(); j++) {
                double[] alpha = new double[ROWS];
                store.addTo(alpha, j, 1);
                factors.solve(alpha);
                int r = j % ROWS;
                if (Math.abs(alpha[r]) > 0.1) {
                    factors.exchange(r, alpha);
                    basis[r] = j;
                    assertSolves(factors, dense(store, basis), random, "seed " + seed + ", column " + j);
                }
            }
            assertThat(factors.isStale()).isTrue();
            factors.factor(store, basis);
            assertThat(factors.isStale()).isFalse();
            assertSolves(factors, dense(store, basis), random, "seed " + seed + ", anew");
        }
    }

    @Test
    void aColumnThatDependsOnOthersLeavesItsRowToAnArtificialOne() {
        ColumnStore store = new ColumnStore();
        int a = store.add(0, new int[] {0, 1}, new double[] {1, 2}, 1);
        int twice = store.add(0, new int[] {0, 1}, new double[] {2, 4}, 1);
        int c = store.add(0, new int[] {1, 2}, new double[] {1, 1}, 1);
        int[] basis = {a, twice, c};
        BasisFactors factors = new BasisFactors(3);
        factors.factor(store, basis);
        assertThat(basis).containsOnlyOnce(-1).contains(c);
        assertThat(Arrays.stream(basis).filter(j -> j == a || j == twice).count())
                .isEqualTo(1);
        // With 1 in the free row the basis is whole again and solves what was asked.
        double[] x = {3, 5, 7};
        factors.solve(x);
        double[] back = new double[3];
        for (int r = 0; r < 3; r++) {
            if (basis[r] < 0) {
                back[r] += x[r];
            } else {
                store.addTo(back, basis[r], x[r]);
            }
        }
        assertThat(back).containsExactly(new double[] {3, 5, 7}, within(1e-9));
    }
}
