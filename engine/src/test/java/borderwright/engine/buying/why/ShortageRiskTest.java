package borderwright.engine.buying.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.prices.BoardOffer;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ShortageRiskTest {
    @Nested
    class Worked {
        @Test
        void withoutSparesEveryBoardMustBeGood() {
            // 1 - 0.95^20 = 0.6415, worked by hand.
            assertThat(ShortageRisk.chance(20, 0, 0.05)).isCloseTo(0.641514, within(1e-6));
        }

        @Test
        void oneSpareForTwoBoards() {
            // Three boards at 1/2 each: short when two or three are bad, 4 of 8.
            assertThat(ShortageRisk.chance(2, 1, 0.5)).isCloseTo(0.5, within(1e-12));
        }

        @Test
        void noRejectsNeedNoSpares() {
            assertThat(ShortageRisk.chance(50, 0, 0)).isZero();
            assertThat(ShortageRisk.sparesFor(50, 0, 0.05)).isZero();
        }

        @Test
        void thousandsOfBoardsDoNotUnderflow() {
            assertThat(ShortageRisk.chance(100_000, 0, 0.1)).isEqualTo(1);
            int spares = ShortageRisk.sparesFor(20_000, 0.1, 0.05);
            // Mean 2,222 of 22,222 and about 1.645 deviations of 45 more, before spares of spares.
            assertThat(spares).isBetween(2_222, 2_400);
        }

        @Test
        void sparesAreCountedWhereTheyAreLongEnough() {
            BoardOffer offer = new BoardOffer("A", "larch", 4000, 1000, 3, Integer.MAX_VALUE);
            LaidBoard laid = LaidBoard.builder("A", "larch")
                    .lengthTicks(4000)
                    .price(333)
                    .count(2)
                    .pieces(List.of(new LaidBoard.LaidPiece("P", 3000)))
                    .build();
            boolean fetched = false;
            ShoppingAnswer answer = ShoppingAnswer.builder(ShoppingAnswer.Status.FOUND)
                    .cost(1000)
                    .bound(1000)
                    .orders(List.of(new ShoppingAnswer.Order(
                            "A", List.of(new ShoppingAnswer.BoardLine(offer, 1)), List.of(), 1000, 0, 0, fetched)))
                    .boards(List.of(laid))
                    .build();
            ShortageRisk larch = ShortageRisk.of(answer, 0.5, 0.05).get(0);
            assertThat(larch.boards()).isEqualTo(2);
            assertThat(larch.spares()).isEqualTo(1);
            assertThat(larch.chance()).isCloseTo(0.5, within(1e-12));
            assertThat(ShortageRisk.chance(2, larch.sparesNeeded(), 0.5)).isLessThanOrEqualTo(0.05);
            assertThat(ShortageRisk.chance(2, larch.sparesNeeded() - 1, 0.5)).isGreaterThan(0.05);
        }
    }

    @Nested
    class Refusals {
        @Test
        void aRateOfOneIsRefused() {
            assertThatThrownBy(() -> ShortageRisk.chance(1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Nested
    class Properties {
        @Test
        void theTailAgreesWithDrawingLots() {
            SplittableRandom random = new SplittableRandom(5);
            int draws = 40_000;
            int shortfalls = 0;
            for (int d = 0; d < draws; d++) {
                int bad = 0;
                for (int board = 0; board < 33; board++) {
                    bad += random.nextDouble() < 0.08 ? 1 : 0;
                }
                shortfalls += bad > 3 ? 1 : 0;
            }
            // Three standard deviations of a share of 40,000 draws are below 0.0075.
            assertThat(ShortageRisk.chance(30, 3, 0.08)).isCloseTo(shortfalls / (double) draws, within(0.0075));
        }
    }
}
