package borderwright.engine.buying.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestCuts;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.cutting.BasketBoards;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.CuttingPlanner;
import borderwright.engine.cutting.PlaneVerifier;
import borderwright.engine.cutting.TestPieces;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.CuttingSpec;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenCutting;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.BoardRow;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NestedBasketTest {
    private static final SectionSpec BAR =
            WoodResolver.section(GivenSection.builder("bar", Length.ofMm(40), Length.ofMm(100))
                    .bothFacesGood(true)
                    .build());
    private static final SawSpec SAW = WoodResolver.saw(
            GivenSaw.builder("saw", SawKind.MITRE_SAW).kerf(Length.ofMm(3)).build());
    private static final EndCut SQUARE = TestPieces.SQUARE;
    private static final EndCut BEVEL = TestCuts.of(45, 0, EndCut.LongPoint.MARKED_FACE, 40);
    private static final EndCut MITRE = TestCuts.of(0, 45, EndCut.LongPoint.UPPER_EDGE, 100);
    private static final CuttingSpec NO_TRIM =
            WoodResolver.cutting(GivenCutting.builder().trim(Length.ZERO).build());

    private static Piece piece(String label, double mm, EndCut left, EndCut right) {
        return TestPieces.piece("bar", label, mm, left, right);
    }

    private static BoardOffer board(double mm, long price) {
        return new BoardOffer("A", "bar", Length.ofMm(mm).ticks(), price, 1, Integer.MAX_VALUE);
    }

    private static CuttingJob job(List<BoardInHand> boards, List<Piece> pieces) {
        return new CuttingJob(boards, pieces, List.of(BAR), List.of(SAW), NO_TRIM);
    }

    private static ShoppingProblem problem(List<Piece> pieces, List<BoardOffer> boards) {
        return ShoppingProblem.builder(DemandMaker.of(pieces, NO_TRIM, Length.ofMm(3)))
                .boards(boards)
                .kerfTicks(Length.ofMm(3).ticks())
                .build();
    }

    @Test
    void twoMitredPiecesComeOutOfABoardThatIsTooShortForThemSideBySide() {
        // 2 x 1000 mm less a mitre of 100 mm and a kerf of 4.2 mm: 1904.3 mm of a board of 1910 mm.
        List<Piece> pieces = List.of(piece("a", 1000, MITRE, MITRE), piece("b", 1000, MITRE, MITRE));
        NestedBasket.Bought bought = NestedBasket.buy(
                job(List.of(), pieces),
                problem(pieces, List.of(board(1910, 500), board(2400, 800))),
                Budget.ofSteps(10_000));
        assertThat(bought.answer().cost()).isEqualTo(500);
        assertThat(bought.answer().proven()).isTrue();
        assertThat(bought.saved()).isEqualTo(300);
    }

    @Test
    void squarePiecesAreBoughtAsEver() {
        List<Piece> pieces = List.of(piece("a", 1000, SQUARE, SQUARE), piece("b", 1000, SQUARE, SQUARE));
        NestedBasket.Bought bought = NestedBasket.buy(
                job(List.of(), pieces),
                problem(pieces, List.of(board(1910, 500), board(2400, 800))),
                Budget.ofSteps(10_000));
        assertThat(bought.answer().cost()).isEqualTo(800);
        assertThat(bought.saved()).isZero();
    }

    @Test
    void whatIsBoughtCanBeCutAndNoWayToNestCostsLess() {
        int nested = 0;
        for (long seed = 0; seed < 150; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Piece> pieces = new ArrayList<>();
            List<EndCut> ends = List.of(SQUARE, BEVEL, MITRE);
            for (int i = 0; i < 4; i++) {
                pieces.add(piece(
                        "p" + i, random.nextInt(300, 1200), ends.get(random.nextInt(3)), ends.get(random.nextInt(3))));
            }
            List<BoardOffer> offers = List.of(
                    board(random.nextInt(1250, 1700), random.nextInt(400, 600)),
                    board(random.nextInt(1900, 2600), random.nextInt(650, 900)));
            NestedBasket.Bought bought =
                    NestedBasket.buy(job(List.of(), pieces), problem(pieces, offers), Budget.ofSteps(50_000));
            ShoppingAnswer answer = bought.answer();
            CuttingJob there = job(BasketBoards.of(answer, Length.ZERO), pieces);
            CuttingPlan plan = CuttingPlanner.plan(there, Budget.ofSteps(1000));
            assertThat(plan.uncut()).as("seed %d", seed).isEmpty();
            assertThat(PlaneVerifier.faults(there, plan)).as("seed %d", seed).isEmpty();
            long least = least(pieces, offers);
            assertThat(answer.bound()).as("bound, seed %d", seed).isEqualTo(least);
            assertThat(answer.cost()).as("cost, seed %d", seed).isEqualTo(least);
            nested += bought.saved() > 0 ? 1 : 0;
        }
        assertThat(nested).isGreaterThan(5);
    }

    /** Every way to share four pieces out, each share on the cheapest board that takes it nested. */
    private static long least(List<Piece> pieces, List<BoardOffer> offers) {
        return share(pieces, new ArrayList<>(), 0, offers);
    }

    private static long share(List<Piece> pieces, List<List<Piece>> shares, int at, List<BoardOffer> offers) {
        if (at == pieces.size()) {
            long sum = 0;
            for (List<Piece> share : shares) {
                long cheapest = offers.stream()
                        .filter(o -> BoardRow.of(
                                        job(List.of(), pieces),
                                        BoardInHand.bought(1, "bar", new Length(o.lengthTicks()), "A", Length.ZERO),
                                        share)
                                .fits())
                        .mapToLong(BoardOffer::packPrice)
                        .min()
                        .orElse(1_000_000);
                sum += cheapest;
            }
            return sum;
        }
        long least = Long.MAX_VALUE;
        for (int s = 0; s <= shares.size(); s++) {
            if (s == shares.size()) {
                shares.add(new ArrayList<>());
            }
            shares.get(s).add(pieces.get(at));
            least = Math.min(least, share(pieces, shares, at + 1, offers));
            shares.get(s).remove(shares.get(s).size() - 1);
            if (shares.get(s).isEmpty()) {
                shares.remove(s);
                break;
            }
        }
        return least;
    }
}
