package borderwright.engine.buying.suppliers;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buying.Cuttable;
import borderwright.engine.buying.boards.BoardModel;
import borderwright.engine.buying.boards.MasterProgram;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds of orders that must reach a value, on seeded lists of two sections and two suppliers. */
class CoupledSearchTest {
    @Test
    void floorsLieBelowEveryWayToServeTheirSectionAndRaiseTheBound() {
        int floors = 0;
        int raised = 0;
        for (long seed = 0; seed < 60; seed++) {
            ShoppingCase shopping = new ShoppingCase(problem(seed));
            SupplierCase c = bothFree(shopping);
            Budget budget = Budget.ofSteps(5_000_000);
            SharedSearches sections = new SharedSearches(shopping, budget);
            MasterProgram master = new MasterProgram(new CaseModel(shopping, c).model(), c.sensibleGrains());
            master.solve(Long.MAX_VALUE, budget);
            List<BoardModel.Floor> missed = new SectionBounds(shopping, c, sections).missed(master, budget, 1_000_000);
            for (BoardModel.Floor floor : missed) {
                floors++;
                assertThat(leastSum(shopping, floor)).as("seed %d", seed).isGreaterThanOrEqualTo(floor.least);
            }
            MasterProgram sharper =
                    new MasterProgram(new CaseModel(shopping, c).model().withFloors(missed), c.sensibleGrains());
            sharper.addAll(master);
            sharper.solve(Long.MAX_VALUE, budget);
            assertThat(sharper.bound()).as("seed %d", seed).isGreaterThanOrEqualTo(master.bound());
            raised += sharper.bound() > master.bound() ? 1 : 0;
        }
        assertThat(floors).isGreaterThan(40);
        assertThat(raised).isGreaterThan(15);
    }

    @Test
    void boardsMovedBetweenSuppliersKeepTheirPiecesAndReachEveryMark() {
        int moved = 0;
        for (long seed = 0; seed < 200; seed++) {
            ShoppingProblem problem = problem(seed);
            ShoppingCase shopping = new ShoppingCase(problem);
            SupplierCase c = bothFree(shopping);
            Purchase apart = new SharedSearches(shopping, Budget.ofSteps(1000)).separate(c);
            if (apart == null || c.isMetBy(apart.value)) {
                continue;
            }
            Purchase shifted = ThresholdRepair.of(shopping, c, apart);
            if (shifted != null) {
                moved++;
                assertThat(c.isMetBy(shifted.value)).as("seed %d", seed).isTrue();
                for (int s = 0; s < shifted.packings.size(); s++) {
                    assertThat(shifted.packings.get(s).count())
                            .isEqualTo(apart.packings.get(s).count());
                }
            }
        }
        assertThat(moved).isGreaterThan(80);
    }

    private static SupplierCase bothFree(ShoppingCase shopping) {
        return SupplierCase.all(shopping, 100).stream()
                .filter(c -> c.leastValue(0) > 0 && c.leastValue(1) > 0)
                .findFirst()
                .orElseThrow();
    }

    /** Two sections of four to six pieces; each supplier delivers free from a value that both cannot reach by chance. */
    private static ShoppingProblem problem(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Demand> demands = new ArrayList<>();
        List<BoardOffer> boards = new ArrayList<>();
        List<SupplierTerms> terms = new ArrayList<>();
        for (int s = 0; s < 2; s++) {
            for (int n = random.nextInt(2, 4); n > 0; n--) {
                demands.add(new Demand("s" + s, random.nextInt(7, 30), random.nextInt(1, 4), "p"));
            }
        }
        for (String name : List.of("Alder", "Birch")) {
            terms.add(new SupplierTerms(name, BigDecimal.ZERO, 40, random.nextInt(60, 140), 0));
            for (int s = 0; s < 2; s++) {
                for (int length : new int[] {31, 43}) {
                    boards.add(new BoardOffer(name, "s" + s, length, length + random.nextInt(8), 1, Integer.MAX_VALUE));
                }
            }
        }
        return ShoppingProblem.builder(demands).boards(boards).terms(terms).build();
    }

    /** The least sum of a floor's values over boards that serve its section, found by trying every number of boards. */
    private static long leastSum(ShoppingCase shopping, BoardModel.Floor floor) {
        ShoppingSection section = shopping.sections.get(floor.part);
        int[] boards = new int[section.stock.boards()];
        return leastSum(section, floor, boards, 0, Long.MAX_VALUE);
    }

    private static long leastSum(ShoppingSection section, BoardModel.Floor floor, int[] boards, int j, long best) {
        long sum = 0;
        for (int b = 0; b < j; b++) {
            sum += boards[b] * floor.value[b];
        }
        if (sum >= best) {
            return best;
        }
        if (j == boards.length) {
            return Cuttable.from(section.stock, boards) ? sum : best;
        }
        long least = best;
        for (int n = 0; n <= section.stock.pieces(); n++) {
            boards[j] = n;
            least = leastSum(section, floor, boards, j + 1, least);
        }
        boards[j] = 0;
        return least;
    }
}
