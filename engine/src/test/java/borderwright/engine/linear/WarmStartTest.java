package borderwright.engine.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.effort.Budget;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Programmes that change while they are solved come to the same cost as if they were solved from the start. */
class WarmStartTest {
    private static final double NEAR = 1e-4;

    private static Budget plenty() {
        return Budget.ofSteps(1_000_000_000);
    }

    @Test
    void columnsAddedLaterAreFound() {
        for (long seed = 0; seed < 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            RandomProgram p = RandomProgram.of(random, 12, 40);
            LinearProgram program = p.program(8);
            assertThat(program.primal(plenty())).isTrue();
            for (int j = 8; j < p.columns(); j++) {
                assertThat(p.addTo(program, j)).isEqualTo(p.first() + j);
                assertThat(j % 5 != 0 || program.primal(plenty())).isTrue();
            }
            assertThat(program.primal(plenty())).isTrue();
            assertThat(program.objective()).as("seed " + seed).isCloseTo(p.optimum(), within(NEAR));
        }
    }

    @Test
    void columnsThatSleepCostNothingAndWakeAgain() {
        for (long seed = 0; seed < 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            RandomProgram p = RandomProgram.of(random, 10, 40);
            LinearProgram program = p.program(p.columns());
            assertThat(program.primal(plenty())).isTrue();
            double optimum = program.objective();
            int all = program.awakes();
            program.keepCheapest(p.first(), 5);
            assertThat(program.awakes()).isLessThan(all);
            assertThat(program.objective()).as("seed " + seed).isCloseTo(optimum, within(NEAR));
            // Another demand, met from the columns that are awake: no cheaper than with all of them.
            p.least[0] += 3;
            program.require(0, p.least[0]);
            assertThat(program.dual(Double.POSITIVE_INFINITY, plenty())).isTrue();
            assertThat(program.primal(plenty())).isTrue();
            assertThat(program.objective()).as("seed " + seed).isGreaterThan(p.optimum() - NEAR);
            int woken = 0;
            for (int j = 0; j < p.columns(); j++) {
                woken += program.wake(p.first() + j) ? 1 : 0;
            }
            assertThat(woken).isPositive();
            assertThat(program.awakes()).isEqualTo(all);
            assertThat(program.primal(plenty())).isTrue();
            assertThat(program.objective()).as("seed " + seed).isCloseTo(p.optimum(), within(NEAR));
        }
    }

    @Test
    void otherBoundsAndDemandsAreMendedByTheDualMethod() {
        for (long seed = 0; seed < 60; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            RandomProgram p = RandomProgram.of(random, 10, 25);
            LinearProgram program = p.program(p.columns());
            assertThat(program.primal(plenty())).isTrue();
            for (int change = 0; change < 20; change++) {
                if (random.nextBoolean()) {
                    int r = random.nextInt(p.rows());
                    p.least[r] = random.nextInt(-4, 12);
                    program.require(r, p.least[r]);
                } else {
                    int j = random.nextInt(p.columns());
                    p.lower[j] = random.nextInt(3);
                    p.upper[j] = p.lower[j] + random.nextInt(6);
                    program.bound(p.first() + j, p.lower[j], p.upper[j]);
                }
                assertThat(program.dual(Double.POSITIVE_INFINITY, plenty())).isTrue();
                assertThat(program.primal(plenty())).isTrue();
                assertThat(program.objective())
                        .as("seed " + seed + ", change " + change)
                        .isCloseTo(p.optimum(), within(NEAR));
            }
        }
    }

    @Test
    void anEarlierBasisIsTakenUpAgain() {
        for (long seed = 0; seed < 60; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            RandomProgram p = RandomProgram.of(random, 10, 25);
            LinearProgram program = p.program(p.columns());
            assertThat(program.primal(plenty())).isTrue();
            double before = program.objective();
            Basis.Stand stand = program.stand();
            double once = p.least[0];
            program.require(0, once + 5);
            program.dual(Double.POSITIVE_INFINITY, plenty());
            program.primal(plenty());
            program.sleep(p.first(), 0);
            program.require(0, once);
            program.takeUp(stand);
            assertThat(program.objective()).as("seed " + seed).isCloseTo(before, within(NEAR));
            assertThat(program.dual(Double.POSITIVE_INFINITY, plenty())).isTrue();
            assertThat(program.primal(plenty())).isTrue();
            assertThat(program.objective()).as("seed " + seed).isCloseTo(p.optimum(), within(NEAR));
        }
    }

    @Test
    void theDualMethodStopsAboveItsCutoff() {
        LinearProgram program = new LinearProgram(new double[] {1}, new double[] {100});
        program.add(2, new int[] {0}, new double[] {1}, Double.POSITIVE_INFINITY);
        assertThat(program.primal(plenty())).isTrue();
        program.require(0, 10);
        assertThat(program.dual(15, plenty())).isFalse();
        assertThat(program.dual(25, plenty())).isTrue();
        assertThat(program.objective()).isCloseTo(20, within(NEAR));
    }
}
