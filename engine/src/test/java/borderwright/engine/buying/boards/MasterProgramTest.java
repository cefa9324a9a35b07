package borderwright.engine.buying.boards;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.effort.Budget;
import borderwright.engine.stock.BoardTypes;
import borderwright.engine.stock.StockCase;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MasterProgramTest {
    /** 40 sizes of 50 to 449 in boards of 1000 at price 1. */
    private static StockCase stock() {
        int[] sizes = new SplittableRandom(3)
                .ints(50, 450)
                .distinct()
                .limit(40)
                .sorted()
                .toArray();
        long[] falling = new long[sizes.length];
        Arrays.setAll(falling, i -> sizes[sizes.length - 1 - i]);
        int[] demand = new int[sizes.length];
        Arrays.fill(demand, 3);
        return new StockCase(falling, demand, BoardTypes.singly(new long[] {1000}, new long[] {1}));
    }

    @Test
    void aSearchThatTheBudgetCutShortDoesNotCountAsSolved() {
        MasterProgram whole = new MasterProgram(BoardModel.of(stock()), 120);
        assertThat(whole.solve(Long.MAX_VALUE, Budget.ofSteps(1_000_000))).isTrue();
        int cutShort = 0;
        for (long units = 1; units < 4000; units += 37) {
            MasterProgram master = new MasterProgram(BoardModel.of(stock()), 120);
            if (master.solve(Long.MAX_VALUE, Budget.ofSteps(units))) {
                assertThat(master.bound()).as("%d units", units).isEqualTo(whole.bound());
            } else {
                cutShort++;
            }
        }
        assertThat(cutShort).isPositive();
    }
}
