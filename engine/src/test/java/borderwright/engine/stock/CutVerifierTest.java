package borderwright.engine.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import borderwright.engine.problem.FailedCheckException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Packings that are wrong by one piece, one unit of length or one board are found out. */
class CutVerifierTest {
    /** Four pieces of 5 from at most two boards of 10. */
    private static final StockCase STOCK = new StockCase(
            new long[] {5},
            new int[] {4},
            BoardTypes.singly(new long[] {10}, new long[] {1}).available(new int[] {2}));

    private static Packing packing(int each, int boards) {
        Packing packing = new Packing();
        packing.add(new CuttingPattern(0, new int[] {0}, new int[] {each}), boards);
        return packing;
    }

    @Test
    void aRightPackingIsGivenBack() {
        Packing right = packing(2, 2);
        assertThat(CutVerifier.verified(STOCK, right)).isSameAs(right);
    }

    @Test
    void brokenPackingsAreRefused() {
        assertThatThrownBy(() -> CutVerifier.verified(STOCK, packing(3, 2)))
                .isInstanceOf(FailedCheckException.class)
                .hasMessageContaining("uses 15 of 10");
        assertThatThrownBy(() -> CutVerifier.verified(STOCK, packing(2, 1)))
                .isInstanceOf(FailedCheckException.class)
                .hasMessageContaining("2 of 4 cut");
        assertThatThrownBy(() -> CutVerifier.verified(STOCK, packing(2, 3)))
                .isInstanceOf(FailedCheckException.class)
                .hasMessageContaining("3 bought of 2");
    }

    @Test
    void aBoardMustHoldItsPiecesAndCutsBetweenItsTrims() {
        assertThat(CutVerifier.faultsOfBoard(100, 10, 3, List.of(40L, 37L))).isEmpty();
        assertThat(CutVerifier.faultsOfBoard(100, 10, 3, List.of(40L, 38L))).hasSize(1);
        assertThat(CutVerifier.faultsOfBoard(100, 10, 3, List.of(0L))).hasSize(1);
    }
}
