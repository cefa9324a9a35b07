package borderwright.engine.buying.why;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buying.BruteForce;
import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.ShopperBruteForceTest;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.message.English;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.MinorUnit;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ExplainerTest {
    private static final long MM = 320;
    private static final int ANY = Integer.MAX_VALUE;
    private static final MinorUnit PENNIES = MinorUnit.of(CurrencyUnit.of("GBP"));

    private static BoardOffer board(String supplier, int mm, long price, int pack) {
        return new BoardOffer(supplier, "larch", mm * MM, price, pack, ANY);
    }

    private static ShoppingProblem problem(List<Demand> demands, List<BoardOffer> boards, List<SupplierTerms> terms) {
        return ShoppingProblem.builder(demands)
                .boards(boards)
                .terms(terms)
                .kerfTicks(3 * MM)
                .build();
    }

    private static Explanation explain(ShoppingProblem problem) {
        ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(100_000));
        assertThat(answer.proven()).isTrue();
        return Explainer.explain(problem, answer, Budget.ofSteps(1_000_000));
    }

    private static List<String> words(ShoppingProblem problem) {
        ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(100_000));
        Explanation why = Explainer.explain(problem, answer, Budget.ofSteps(1_000_000));
        return BasketReasons.of(answer, why, PENNIES).stream()
                .map(English.METRIC::text)
                .toList();
    }

    @Test
    void theRunnerUpIsGivenThePriceAtWhichItWins() {
        // Two pieces on one board of A for 1000, or on one of B with delivery of 200: B wins at 799 and not at 800.
        ShoppingProblem problem = problem(
                List.of(new Demand("larch", 1000 * MM, 2, "a")),
                List.of(board("A", 2400, 1000, 1), board("B", 2400, 950, 1)),
                List.of(new SupplierTerms("B", BigDecimal.ZERO, 200, SupplierTerms.NEVER, 0)));
        boolean sharp = true;
        assertThat(explain(problem).boards())
                .containsExactly(new Explanation.BoardWins(board("B", 2400, 950, 1), 799, sharp));
        // 950 x 841 / 1000 = 798.95, rounded up to 799; 842 gives 800.
        assertThat(explain(problem).suppliers()).containsExactly(new Explanation.SupplierWins("B", 841, sharp));
        assertThat(words(problem))
                .contains(
                        "Everything from B alone costs GBP 11.50, GBP 1.50 more than this basket.",
                        "The 2400 mm larch from B would be bought at GBP 7.99 or less. It costs GBP 9.50.",
                        "An order would go to B if all its prices were 15.9 % lower.");
    }

    @Test
    void aBasketOfOneSupplierAmongSeveralIsNamedAsThat() {
        ShoppingProblem problem = problem(
                List.of(new Demand("larch", 1000 * MM, 2, "a")),
                List.of(board("A", 2400, 1000, 1), board("B", 900, 950, 1)),
                List.of());
        assertThat(words(problem))
                .contains("This basket comes from A alone.", "Alone, B cannot supply everything on the list.");
    }

    @Test
    void aBoardThatHelpsNobodyEvenForNothingIsLeftOut() {
        ShoppingProblem problem = problem(
                List.of(new Demand("larch", 2000 * MM, 2, "a")),
                List.of(board("A", 2400, 1000, 1), board("A", 1200, 300, 1)),
                List.of());
        assertThat(explain(problem).boards()).isEmpty();
    }

    @Test
    void aDearerLengthThatWastesLessGivesWhatItSaves() {
        // 3.6 m at 1300 gives three of 1195 mm; 2.4 m at 800 is cheaper for its length but gives two: 2 x 800 = 1600.
        ShoppingProblem problem = problem(
                List.of(new Demand("larch", 1195 * MM, 3, "a")),
                List.of(board("A", 3600, 1300, 1), board("A", 2400, 800, 1)),
                List.of());
        boolean possible = true;
        assertThat(explain(problem).dearer())
                .containsExactly(new Explanation.DearerLength(
                        board("A", 3600, 1300, 1), board("A", 2400, 800, 1), possible, 300, 15 * MM, 1215 * MM));
        assertThat(words(problem))
                .contains("The 3600 mm larch from A costs more for its length than the 2400 mm larch from A, but saves"
                        + " GBP 3.00 in all. Without it 1200 mm more would be left over.");
    }

    @Test
    void packsAndDeliveryGiveWhatTheyCost() {
        ShoppingProblem problem = problem(
                List.of(new Demand("larch", 2000 * MM, 2, "a")),
                List.of(board("A", 2400, 3000, 4)),
                List.of(new SupplierTerms("A", BigDecimal.ZERO, 200, 9000, 0)));
        assertThat(words(problem))
                .containsExactly(
                        "Delivery by A costs GBP 2.00.",
                        "With GBP 60.00 more of goods, delivery by A is free, but that saves nothing in all.",
                        "2 of the 2400 mm larch in packs of 4 from A are bought but not cut, to fill a pack or to reach"
                                + " an order threshold. Cost: GBP 15.00.");
    }

    @Nested
    class Properties {
        @Test
        void atThePriceGivenABasketCostsLessAndAtOneMoreNoneDoes() {
            int checked = 0;
            for (long seed = 0; seed < 200; seed++) {
                ShoppingProblem problem = ShopperBruteForceTest.small(seed);
                ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(2_000_000));
                Explanation why = Explainer.explain(problem, answer, Budget.ofSteps(2_000_000));
                for (Explanation.BoardWins wins : why.boards()) {
                    assertThat(wins.sharp()).as("seed %d", seed).isTrue();
                    assertThat(BruteForce.leastCost(repriced(problem, wins.offer(), wins.atPrice())))
                            .as("seed %d", seed)
                            .isLessThan(answer.cost());
                    assertThat(BruteForce.leastCost(repriced(problem, wins.offer(), wins.atPrice() + 1)))
                            .as("seed %d", seed)
                            .isGreaterThanOrEqualTo(answer.cost());
                    checked++;
                }
                for (Explanation.DearerLength dearer : why.dearer()) {
                    long without = BruteForce.leastCost(problem.withOffers(
                            problem.boards().stream()
                                    .filter(b -> !b.equals(dearer.offer()))
                                    .toList(),
                            problem.goods()));
                    assertThat(without)
                            .as("seed %d", seed)
                            .isEqualTo(dearer.possible() ? answer.cost() + dearer.moreWithout() : -1);
                    checked++;
                }
            }
            assertThat(checked).isGreaterThan(50);
        }

        private static ShoppingProblem repriced(ShoppingProblem problem, BoardOffer offer, long price) {
            return problem.withOffers(
                    problem.boards().stream()
                            .map(b -> b.equals(offer) ? b.withPrice(price) : b)
                            .toList(),
                    problem.goods());
        }
    }
}
