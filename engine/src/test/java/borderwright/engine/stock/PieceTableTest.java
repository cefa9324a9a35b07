package borderwright.engine.stock;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.effort.Budget;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PieceTableTest {
    @Test
    void theTableAndTheListAgreeWithTryingEverything() {
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int n = random.nextInt(1, 6);
            long[] size = new long[n];
            long[] value = new long[n];
            int[] limit = new int[n];
            for (int i = 0; i < n; i++) {
                size[i] = random.nextInt(1, 20);
                value[i] = random.nextInt(0, 30);
                limit[i] = random.nextInt(0, 5);
            }
            int capacity = random.nextInt(1, 60);
            PieceTable table = new Knapsack(size, capacity);
            PieceTable list = new ListKnapsack(size, capacity);
            table.solve(value, limit, Budget.ofSteps(1_000_000));
            list.solve(value, limit, Budget.ofSteps(1_000_000));
            for (int c = 0; c <= capacity; c++) {
                long most = most(size, value, limit, 0, c);
                assertThat(table.best(c))
                        .as("table, seed %d, length %d", seed, c)
                        .isEqualTo(most);
                assertThat(list.best(c)).as("list, seed %d, length %d", seed, c).isEqualTo(most);
                assertServes(table, size, value, limit, c, most);
                assertServes(list, size, value, limit, c, most);
            }
            assertThat(list.isExact()).isTrue();
        }
    }

    private static void assertServes(PieceTable table, long[] size, long[] value, int[] limit, int c, long most) {
        int[] counts = new int[size.length];
        table.counts(c, counts);
        long length = 0;
        long worth = 0;
        for (int i = 0; i < counts.length; i++) {
            length += counts[i] * size[i];
            worth += counts[i] * value[i];
            assertThat(counts[i]).isBetween(0, limit[i]);
        }
        assertThat(length).isLessThanOrEqualTo(c);
        assertThat(worth).isEqualTo(most);
    }

    private static long most(long[] size, long[] value, int[] limit, int from, long room) {
        if (from == size.length) {
            return 0;
        }
        long best = 0;
        for (int a = 0; a <= limit[from] && a * size[from] <= room; a++) {
            best = Math.max(best, a * value[from] + most(size, value, limit, from + 1, room - a * size[from]));
        }
        return best;
    }
}
