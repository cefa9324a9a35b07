package borderwright.engine.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.effort.Budget;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The simplex methods against a general solver, and against the duality of linear programmes, which needs none. */
class LinearProgramTest {
    private static final double NEAR = 1e-6;

    private static Budget plenty() {
        return Budget.ofSteps(1_000_000_000);
    }

    /** Values within their bounds, every row met or paid for, and prices that prove that nothing costs less. */
    private static void assertOptimal(RandomProgram p, LinearProgram program, String seed) {
        double tolerance = NEAR * (1 + Math.abs(program.objective()));
        double dual = 0;
        for (int r = 0; r < p.rows(); r++) {
            double price = program.price(r);
            assertThat(price).as(seed).isBetween(-NEAR, p.shortage + NEAR);
            dual += price * p.least[r];
            double sum = program.value(p.rows() + r);
            for (int j = 0; j < p.columns(); j++) {
                sum += p.entry[r][j] * program.value(p.first() + j);
            }
            assertThat(sum).as(seed).isGreaterThanOrEqualTo(p.least[r] - NEAR);
        }
        for (int j = 0; j < p.columns(); j++) {
            double value = program.value(p.first() + j);
            assertThat(value).as(seed).isBetween(p.lower[j] - NEAR, p.upper[j] + NEAR);
            double reduced = p.cost[j];
            for (int r = 0; r < p.rows(); r++) {
                reduced -= program.price(r) * p.entry[r][j];
            }
            // A column gains at its upper bound what its reduced cost is below 0, and pays at its lower one.
            dual += reduced < 0
                    ? (p.upper[j] < Double.POSITIVE_INFINITY ? reduced * p.upper[j] : 0)
                    : reduced * p.lower[j];
            assertThat(reduced < -NEAR && p.upper[j] == Double.POSITIVE_INFINITY)
                    .as(seed)
                    .isFalse();
        }
        assertThat(dual).as(seed).isCloseTo(program.objective(), within(tolerance));
    }

    @Test
    void randomProgrammesCostWhatAGeneralSolverFinds() {
        for (long seed = 0; seed < 400; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            RandomProgram p = RandomProgram.of(random, random.nextInt(1, 14), random.nextInt(1, 30));
            LinearProgram program = p.program(p.columns());
            assertThat(program.primal(plenty())).as("seed " + seed).isTrue();
            assertOptimal(p, program, "seed " + seed);
            assertThat(program.objective()).as("seed " + seed).isCloseTo(p.optimum(), within(NEAR * 100));
        }
    }

    @Test
    void degenerateProgrammesComeToAnEnd() {
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            RandomProgram p = RandomProgram.degenerate(random, random.nextInt(5, 30), random.nextInt(5, 60));
            LinearProgram program = p.program(p.columns());
            assertThat(program.primal(plenty())).as("seed " + seed).isTrue();
            assertOptimal(p, program, "seed " + seed);
            assertThat(program.objective()).as("seed " + seed).isCloseTo(p.optimum(), within(NEAR * 100));
        }
    }

    @Test
    void rowsThatNothingMeetsAreLeftShort() {
        // x1 + x2 >= 7 with both at most 2, and -x1 >= 1, which no x1 >= 0 meets: short by 3 and 1.
        LinearProgram program = new LinearProgram(new double[] {7, 1}, new double[] {100, 100});
        program.add(1, new int[] {0, 1}, new double[] {1, -1}, 2);
        int second = program.add(1, new int[] {0}, new double[] {1}, 2);
        assertThat(program.primal(plenty())).isTrue();
        // One x1 more meets one unit of the first row and misses one of the second, so it gains nothing.
        assertThat(program.value(second)).isCloseTo(2, within(NEAR));
        assertThat(program.unmet()).isCloseTo(6, within(NEAR));
        assertThat(program.objective()).isCloseTo(602, within(NEAR));
    }

    @Test
    void manyExchangesLeaveTheOptimumRight() {
        // Far more exchanges than are kept before the basis is factored anew.
        for (long seed = 0; seed < 5; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            RandomProgram p = RandomProgram.of(random, 70, 260);
            LinearProgram program = p.program(p.columns());
            assertThat(program.primal(plenty())).as("seed " + seed).isTrue();
            assertOptimal(p, program, "seed " + seed);
        }
    }

    @Test
    void aSpentBudgetStopsBothMethods() {
        RandomProgram p = RandomProgram.of(new SplittableRandom(1), 20, 60);
        LinearProgram program = p.program(p.columns());
        assertThat(program.primal(Budget.ofSteps(1))).isFalse();
        assertThat(program.primal(plenty())).isTrue();
        assertOptimal(p, program, "after a stop");
    }
}
