package borderwright.engine.buying;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.message.English;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ShopperTest {
    private static final int MM = 320;
    private static final int ANY = Integer.MAX_VALUE;

    private static Demand piece(long mm, int quantity) {
        return new Demand("larch", mm * MM, quantity, "P" + mm);
    }

    private static BoardOffer board(String supplier, long mm, long price) {
        return new BoardOffer(supplier, "larch", mm * MM, price, 1, ANY);
    }

    private static ShoppingProblem problem(List<Demand> demands, List<BoardOffer> boards, List<SupplierTerms> terms) {
        return ShoppingProblem.builder(demands)
                .boards(boards)
                .terms(terms)
                .kerfTicks(3 * MM)
                .build();
    }

    private static ShoppingAnswer bought(ShoppingProblem problem) {
        ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(1_000_000));
        assertThat(answer.status()).as(answer.reasons().toString()).isEqualTo(ShoppingAnswer.Status.FOUND);
        assertThat(ShoppingCheck.faults(problem, answer)).isEmpty();
        return answer;
    }

    private static ShoppingAnswer refused(ShoppingProblem problem) {
        ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(1_000_000));
        assertThat(answer.status()).isEqualTo(ShoppingAnswer.Status.IMPOSSIBLE);
        return answer;
    }

    @Nested
    class FullBoards {
        @Test
        void boardsThatThreePiecesFillExactlyAreFound() {
            // After the triplet class of Falkenauer (1996): 60 full boards are known to suffice, and none is to spare.
            SplittableRandom random = new SplittableRandom(5);
            List<Demand> demands = new ArrayList<>();
            for (int k = 0; k < 60; k++) {
                int a = random.nextInt(380, 491);
                int b = random.nextInt(250, (1000 - a) / 2);
                for (int length : new int[] {a, b, 1000 - a - b}) {
                    demands.add(new Demand("larch", length, 1, "P"));
                }
            }
            ShoppingProblem problem = ShoppingProblem.builder(demands)
                    .boards(List.of(new BoardOffer("A", "larch", 1000, 1, 1, ANY)))
                    .build();
            ShoppingAnswer answer = bought(problem);
            assertThat(answer.cost()).isEqualTo(60);
            assertThat(answer.proven()).isTrue();
        }
    }

    @Nested
    class Limits {
        @Test
        void aPieceAsLongAsTheBoardNeedsNoCut() {
            ShoppingAnswer answer = bought(problem(List.of(piece(2400, 1)), List.of(board("A", 2400, 700)), List.of()));
            assertThat(answer.cost()).isEqualTo(700);
            assertThat(answer.proven()).isTrue();
        }

        @Test
        void twoFortySevenAndFifteenSixteenthsAndAnEighthFitNinetySixInches() {
            // 47 15/16 in = 389,636 ticks, 1/8 in = 1,016 ticks, 96 in = 780,288 ticks: 2 x 389,636 + 1,016 = 780,288.
            ShoppingProblem problem = ShoppingProblem.builder(List.of(new Demand("cedar", 389_636, 2, "side")))
                    .boards(List.of(new BoardOffer("A", "cedar", 780_288, 1000, 1, ANY)))
                    .kerfTicks(1016)
                    .build();
            assertThat(bought(problem).boards()).hasSize(1);
        }

        @Test
        void fourTwoFootPiecesDoNotComeFromAnEightFootBoard() {
            ShoppingAnswer answer = bought(problem(List.of(piece(600, 4)), List.of(board("A", 2400, 500)), List.of()));
            assertThat(answer.cost()).isEqualTo(1000);
        }

        @Test
        void withoutKerfTheyDo() {
            ShoppingProblem problem = ShoppingProblem.builder(List.of(piece(600, 4)))
                    .boards(List.of(board("A", 2400, 500)))
                    .build();
            assertThat(bought(problem).cost()).isEqualTo(500);
        }

        @Test
        void nothingToCutCostsNothing() {
            ShoppingAnswer answer = bought(problem(List.of(), List.of(board("A", 2400, 500)), List.of()));
            assertThat(answer.cost()).isZero();
            assertThat(answer.proven()).isTrue();
        }

        @Test
        void boardsForNothingCostNothing() {
            ShoppingAnswer answer = bought(problem(List.of(piece(1000, 9)), List.of(board("A", 2400, 0)), List.of()));
            assertThat(answer.cost()).isZero();
            assertThat(answer.proven()).isTrue();
        }

        @Test
        void tenDigitLengthsAreExact() {
            ShoppingAnswer answer = bought(
                    problem(List.of(piece(3_333_333_331L, 3)), List.of(board("A", 9_999_999_999L, 1234)), List.of()));
            assertThat(answer.cost()).isEqualTo(1234);
        }

        @Test
        void trimsAreCutOffBoughtBoardsButNotOffOwnedOnes() {
            ShoppingProblem problem = ShoppingProblem.builder(List.of(piece(2400, 2)))
                    .boards(List.of(board("A", 2420, 700)))
                    .owned(List.of(new OwnedStock("larch", 2400 * MM, 1, "rack 3")))
                    .kerfTicks(3 * MM)
                    .trimTicks(10 * MM)
                    .build();
            ShoppingAnswer answer = bought(problem);
            assertThat(answer.cost()).isEqualTo(700);
            assertThat(answer.boards()).anyMatch(b -> b.owned() && b.supplier().equals("rack 3"));
        }
    }

    @Nested
    class Terms {
        @Test
        void deliveryMakesOneSupplierCheaperThanTheCheapestBoardsFromTwo() {
            List<SupplierTerms> terms = List.of(
                    new SupplierTerms("A", BigDecimal.ZERO, 2500, SupplierTerms.NEVER, 0),
                    new SupplierTerms("B", BigDecimal.ZERO, 1500, SupplierTerms.NEVER, 0));
            ShoppingAnswer answer = bought(problem(
                    List.of(piece(2000, 2), piece(2900, 2)),
                    List.of(board("A", 2000, 500), board("A", 3000, 900), board("B", 3000, 800)),
                    terms));
            // B alone: 4 x 800 + 1500 = 4700; both: 1000 + 1600 + 4000 = 6600; A alone: 1000 + 1800 + 2500 = 5300.
            assertThat(answer.cost()).isEqualTo(4700);
            assertThat(answer.orders())
                    .singleElement()
                    .extracting(ShoppingAnswer.Order::supplier)
                    .isEqualTo("B");
        }

        @Test
        void aLittleMoreIsBoughtWhereThatMakesDeliveryFree() {
            List<SupplierTerms> terms = List.of(new SupplierTerms("A", BigDecimal.ZERO, 2500, 3000, 0));
            ShoppingAnswer answer = bought(problem(List.of(piece(2000, 3)), List.of(board("A", 2400, 950)), terms));
            // 3 x 950 = 2850 and 2500 for delivery; a fourth board brings 3800 and no delivery.
            assertThat(answer.cost()).isEqualTo(3800);
        }

        @Test
        void theSmallestOrderIsReached() {
            List<SupplierTerms> terms = List.of(new SupplierTerms("A", BigDecimal.ZERO, 0, SupplierTerms.NEVER, 2000));
            ShoppingAnswer answer = bought(problem(List.of(piece(2000, 1)), List.of(board("A", 2400, 900)), terms));
            assertThat(answer.cost()).isEqualTo(2700);
        }

        @Test
        void taxIsAddedToGoodsAndDeliveryAndRoundedOncePerOrder() {
            List<SupplierTerms> terms =
                    List.of(new SupplierTerms("A", new BigDecimal("8.875"), 1001, SupplierTerms.NEVER, 0));
            ShoppingAnswer answer = bought(problem(List.of(piece(2000, 3)), List.of(board("A", 2400, 333)), terms));
            // (999 + 1001) x 1.08875 = 2177.5, halves up.
            assertThat(answer.cost()).isEqualTo(2178);
        }

        @Test
        void packsAreBoughtWhole() {
            ShoppingAnswer answer = bought(problem(
                    List.of(piece(2000, 3)),
                    List.of(new BoardOffer("A", "larch", 2400 * MM, 1500, 3, ANY), board("A", 2100, 700)),
                    List.of()));
            // A pack of three: 1500; three singles: 2100.
            assertThat(answer.cost()).isEqualTo(1500);
        }

        @Test
        void goodsAreBoughtInTheSameBasket() {
            List<SupplierTerms> terms = List.of(
                    new SupplierTerms("A", BigDecimal.ZERO, 2000, SupplierTerms.NEVER, 0),
                    new SupplierTerms("B", BigDecimal.ZERO, 2000, SupplierTerms.NEVER, 0));
            BigDecimal box = new BigDecimal("200");
            ShoppingProblem problem = ShoppingProblem.builder(List.of(piece(2000, 1)))
                    .boards(List.of(board("A", 2400, 900)))
                    .terms(terms)
                    .needs(List.of(
                            new GoodsNeed("screw 5 x 70", new BigDecimal("250"), "pieces"),
                            new GoodsNeed("moss", BigDecimal.ONE, "bag")))
                    .goods(List.of(
                            new GoodsOffer("A", "screw 5 x 70", 1200, box, ANY),
                            new GoodsOffer("B", "screw 5 x 70", 700, box, ANY)))
                    .kerfTicks(3 * MM)
                    .build();
            ShoppingAnswer answer = bought(problem);
            // Two boxes from A, 2400, beat two from B, 1400, with another delivery of 2000.
            assertThat(answer.cost()).isEqualTo(900 + 2400 + 2000);
            assertThat(answer.unpriced()).extracting(GoodsNeed::item).containsExactly("moss");
        }
    }

    @Nested
    class Refusals {
        @Test
        void aPieceLongerThanAnyBoardIsNamedWithBothLengths() {
            assertThat(refused(problem(List.of(piece(3000, 1)), List.of(board("A", 2400, 500)), List.of()))
                            .reasons())
                    .extracting(English.METRIC::text)
                    .containsExactly("Piece 'P3000' of section 'larch' is 3000 mm long."
                            + " The longest board on offer gives 2400 mm, 600 mm too little.");
        }

        @Test
        void boardsThatAreNotToBeHadAreNotBought() {
            List<BoardOffer> none = List.of(new BoardOffer("A", "larch", 2400 * MM, 500, 1, 0));
            assertThat(refused(problem(List.of(piece(2000, 1)), none, List.of()))
                            .reasons())
                    .extracting(English.METRIC::text)
                    .containsExactly("Piece 'P2000' of 2000 mm needs section 'larch', and none is on offer.");
        }

        @Test
        void tooFewBoardsAreReportedAsTooFew() {
            List<BoardOffer> two = List.of(new BoardOffer("A", "larch", 2400 * MM, 500, 1, 2));
            assertThat(refused(problem(List.of(piece(2300, 3)), two, List.of())).reasons())
                    .containsExactly(NoBasketMessage.TOO_FEW_BOARDS.of(List.of("larch"), 1));
        }
    }

    @Test
    void theSameProblemGivesTheSameAnswer() {
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            demands.add(piece(300 + 37 * i % 1900, 1 + i % 3));
        }
        ShoppingProblem problem = problem(demands, List.of(board("A", 2400, 911), board("B", 3000, 1107)), List.of());
        assertThat(bought(problem)).isEqualTo(bought(problem));
    }
}
