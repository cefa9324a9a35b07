package borderwright.engine.stock;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.effort.Budget;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SubsetFillTest {
    private static StockCase oneLength(long[] size, int[] demand, long capacity) {
        return new StockCase(size, demand, BoardTypes.singly(new long[] {capacity}, new long[] {1}));
    }

    @Nested
    class Limits {
        @Test
        void piecesThatFillBoardsExactlyLeaveNothing() {
            // Longest first alone would put 6 + 3 on the first board and need a third.
            StockCase stock = oneLength(new long[] {6, 5, 4, 3, 2}, new int[] {1, 1, 1, 1, 1}, 10);
            Packing packing = SubsetFill.pack(stock, 0, 2, Budget.ofSteps(1000));
            assertThat(packing).isNotNull();
            assertThat(packing.count()).isEqualTo(2);
            assertThat(CutVerifier.faults(stock, packing)).isEmpty();
        }

        @Test
        void itGivesUpBeyondTheCostAllowed() {
            StockCase stock = oneLength(new long[] {6}, new int[] {3}, 10);
            assertThat(SubsetFill.pack(stock, 0, 2, Budget.ofSteps(1000))).isNull();
        }

        @Test
        void limitedBoardsAreNotOverused() {
            // One board of 12 at 1 and any number of 10 at 2: the cheap one first, then the other.
            StockCase stock = new StockCase(
                    new long[] {6},
                    new int[] {3},
                    BoardTypes.singly(new long[] {12, 10}, new long[] {1, 2})
                            .available(new int[] {1, StockCase.UNLIMITED}));
            Packing packing = SubsetFill.pack(stock, 0, 100, Budget.ofSteps(1000));
            assertThat(packing).isNotNull();
            assertThat(CutVerifier.faults(stock, packing)).isEmpty();
            assertThat(packing.cost(stock)).isEqualTo(3);
        }

        @Test
        void packedBoardsDoNotSuit() {
            long[] size = {6};
            int[] demand = {3};
            long[] one = {10};
            assertThat(SubsetFill.suits(new StockCase(
                            size, demand, BoardTypes.singly(one, new long[] {1}).inPacks(new int[] {2}))))
                    .isFalse();
        }
    }

    @Nested
    class Properties {
        @Test
        void everyPackingCutsEveryPieceAndFits() {
            for (long seed = 0; seed < 300; seed++) {
                SplittableRandom random = new SplittableRandom(seed);
                int n = random.nextInt(1, 20);
                long[] size = new long[n];
                int[] demand = new int[n];
                long next = random.nextInt(60, 90);
                for (int i = 0; i < n; i++) {
                    size[i] = next;
                    demand[i] = random.nextInt(1, 9);
                    next = Math.max(1, next - random.nextInt(1, 4));
                    if (next >= size[i]) {
                        size = java.util.Arrays.copyOf(size, i + 1);
                        demand = java.util.Arrays.copyOf(demand, i + 1);
                        break;
                    }
                }
                long longest = random.nextInt(90, 300);
                StockCase stock = new StockCase(
                        size,
                        demand,
                        BoardTypes.singly(new long[] {longest, random.nextInt(60, 200)}, new long[] {1, 1})
                                .available(new int[] {StockCase.UNLIMITED, random.nextInt(0, 4)}));
                Packing packing = SubsetFill.pack(stock, seed % 3, Long.MAX_VALUE, Budget.ofSteps(1_000_000));
                assertThat(packing).as("seed %d", seed).isNotNull();
                assertThat(CutVerifier.faults(stock, packing))
                        .as("seed %d", seed)
                        .isEmpty();
                assertThat(packing.count()).as("seed %d", seed).isGreaterThanOrEqualTo(MaterialBound.of(stock));
            }
        }
    }
}
