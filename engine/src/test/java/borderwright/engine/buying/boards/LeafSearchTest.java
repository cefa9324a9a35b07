package borderwright.engine.buying.boards;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buying.Cuttable;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.BoardTypes;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LeafSearchTest {
    @Test
    void boardsOfGivenNumbersAreCutExactlyWhenTryingEverythingCutsThem() {
        int cuttable = 0;
        int tight = 0;
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            StockCase stock = stock(random);
            MasterProgram master = new MasterProgram(BoardModel.of(stock), 1000);
            assertThat(master.solve(Long.MAX_VALUE, Budget.ofSteps(1_000_000))).isTrue();
            for (int turn = 0; turn < 6; turn++) {
                int[] boards = random.ints(stock.boards(), 0, 4).toArray();
                boolean possible = Cuttable.from(stock, boards);
                LeafSearch search = new LeafSearch(master, Budget.ofSteps(1_000_000));
                List<Packing> packings = search.pack(counts(master, boards));
                assertThat(search.isSettled()).as("seed %d", seed).isTrue();
                assertThat(packings != null).as("seed %d", seed).isEqualTo(possible);
                cuttable += possible ? 1 : 0;
                tight += !possible && spare(stock, boards) >= 0 ? 1 : 0;
                if (packings != null) {
                    assertThat(packings.get(0).boards(stock))
                            .as("seed %d", seed)
                            .satisfies(used -> {
                                for (int j = 0; j < used.length; j++) {
                                    assertThat(used[j]).isLessThanOrEqualTo(boards[j]);
                                }
                            });
                    assertThat(pieces(packings.get(0), stock)).isEqualTo(stock.copyOfDemand());
                }
            }
        }
        // Both kinds come up, and not only for want of length.
        assertThat(cuttable).isGreaterThan(50);
        assertThat(tight).isGreaterThan(50);
    }

    @Test
    void aBudgetThatIsSpentSettlesNothing() {
        StockCase stock = stock(new SplittableRandom(5));
        MasterProgram master = new MasterProgram(BoardModel.of(stock), 1000);
        master.solve(Long.MAX_VALUE, Budget.ofSteps(1_000_000));
        LeafSearch search = new LeafSearch(master, Budget.ofSteps(0));
        assertThat(search.pack(counts(master, new int[] {3, 3, 3}))).isNull();
        assertThat(search.isSettled()).isFalse();
    }

    /** Three to five pieces of two to four sizes, three kinds of boards that cost a little more or less for their length. */
    private static StockCase stock(SplittableRandom random) {
        long[] size = random.ints(7, 40)
                .distinct()
                .limit(random.nextInt(2, 5))
                .boxed()
                .sorted((a, b) -> b - a)
                .mapToLong(i -> i)
                .toArray();
        int[] demand = random.ints(size.length, 1, 4).toArray();
        long[] capacity = {41, 53, 67};
        long[] cost = new long[3];
        for (int j = 0; j < 3; j++) {
            cost[j] = capacity[j] + random.nextInt(6);
        }
        return new StockCase(size, demand, BoardTypes.singly(capacity, cost).available(new int[] {9, 9, 9}));
    }

    private static long spare(StockCase stock, int[] boards) {
        long spare = 0;
        for (int j = 0; j < boards.length; j++) {
            spare += boards[j] * stock.capacity(j);
        }
        for (int i = 0; i < stock.sizes(); i++) {
            spare -= stock.demand(i) * stock.size(i);
        }
        return spare;
    }

    private static long[] counts(MasterProgram master, int[] boards) {
        long[] at = new long[master.fixed().size()];
        for (int c = 0; c < at.length; c++) {
            ModelColumn column = master.fixed().get(c);
            if (column.kind() == ModelColumn.Kind.COUNT) {
                at[c] = boards[column.index()];
            }
        }
        for (int c = 0; c < at.length; c++) {
            ModelColumn column = master.fixed().get(c);
            if (column.kind() == ModelColumn.Kind.TOTAL) {
                for (int d = 0; d < at.length; d++) {
                    at[c] += sharesRow(column, master.fixed().get(d)) ? at[d] : 0;
                }
            }
        }
        return at;
    }

    private static boolean sharesRow(ModelColumn total, ModelColumn count) {
        for (int k = 0; k < count.entries() && count.kind() == ModelColumn.Kind.COUNT; k++) {
            if (count.row(k) == total.row(0)) {
                return true;
            }
        }
        return false;
    }

    private static int[] pieces(Packing packing, StockCase stock) {
        int[] pieces = new int[stock.sizes()];
        for (int p = 0; p < packing.kinds(); p++) {
            assertThat(packing.pattern(p).used(stock))
                    .isLessThanOrEqualTo(stock.capacity(packing.pattern(p).board()));
            for (int k = 0; k < packing.pattern(p).kinds(); k++) {
                pieces[packing.pattern(p).item(k)] +=
                        packing.times(p) * packing.pattern(p).count(k);
            }
        }
        return pieces;
    }
}
