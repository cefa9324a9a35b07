package borderwright.engine.buying.boards;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.stock.BoardTypes;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import org.junit.jupiter.api.Test;

class PriceBreakHeuristicTest {
    private static final int USUAL = 0;
    private static final int LOWER = 1;
    private static final int SHORTER = 2;

    /** Boards of 100 at {@code usual}, the same from {@code number} on at {@code lower}, boards of 60 at 50. */
    private static StockCase stock(long usual, long lower, int number) {
        int unlimited = StockCase.UNLIMITED;
        return new StockCase(new long[] {50}, new int[] {20}, BoardTypes.singly(new long[] {100, 100, 60}, new long[] {
                    usual, lower, 50
                }))
                .soldFrom(new int[] {0, number, 0});
    }

    private static Packing packing(int board, int pieces, int times) {
        Packing packing = new Packing();
        packing.add(new CuttingPattern(board, new int[] {0}, new int[] {pieces}), times);
        return packing;
    }

    @Test
    void boardsComeTogetherUnderAPriceWhoseNumberTheyReach() {
        StockCase stock = stock(100, 90, 8);
        Packing gathered = PriceBreakHeuristic.of(stock, packing(USUAL, 2, 10));
        assertThat(gathered.boards(stock)).containsExactly(0, 10, 0);
        assertThat(gathered.cost(stock)).isEqualTo(900);
    }

    @Test
    void idleBoardsAreBoughtWhereThatCostsLess() {
        StockCase stock = stock(100, 80, 12);
        Packing gathered = PriceBreakHeuristic.of(stock, packing(USUAL, 2, 10));
        assertThat(gathered.boards(stock)).containsExactly(0, 10, 0);
        assertThat(gathered.cost(stock)).isEqualTo(12 * 80);
    }

    @Test
    void aPriceIsLeftWhereItsNumberIsTooFar() {
        StockCase stock = stock(100, 95, 12);
        Packing left = PriceBreakHeuristic.of(stock, packing(LOWER, 2, 10));
        assertThat(left.boards(stock)).containsExactly(10, 0, 0);
        assertThat(left.cost(stock)).isEqualTo(1000);
    }

    @Test
    void boardsOfOtherLengthsFillUpANumber() {
        StockCase stock = stock(100, 52, 10);
        Packing packing = packing(LOWER, 2, 9);
        packing.addAll(packing(SHORTER, 1, 2));
        Packing gathered = PriceBreakHeuristic.of(stock, packing);
        assertThat(gathered.boards(stock)).containsExactly(0, 10, 1);
        assertThat(gathered.cost(stock)).isEqualTo(10 * 52 + 50).isLessThan(packing.cost(stock));
    }

    @Test
    void whatIsSoldInAnyNumberStaysAsItIs() {
        StockCase stock = stock(100, 90, 8).soldInAnyNumber();
        Packing packing = packing(USUAL, 2, 10);
        assertThat(PriceBreakHeuristic.of(stock, packing)).isSameAs(packing);
    }
}
