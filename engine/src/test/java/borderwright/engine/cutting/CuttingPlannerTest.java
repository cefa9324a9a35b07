package borderwright.engine.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.buying.nesting.HeldBoards;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenCutting;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import java.util.List;
import org.junit.jupiter.api.Test;

class CuttingPlannerTest {
    static final EndCut SQUARE = TestPieces.SQUARE;
    private static final SectionSpec LARCH = WoodResolver.section(
            GivenSection.builder("larch", Length.ofMm(25), Length.ofMm(150)).build());
    private static final SawSpec MITRE_SAW = WoodResolver.saw(GivenSaw.builder("mitre saw", SawKind.MITRE_SAW)
            .kerf(Length.ofMm(3))
            .lengthStop(true)
            .build());

    static Piece piece(String label, double mm, EndCut left, EndCut right, boolean waits, boolean ground) {
        return TestPieces.piece("larch", label, mm, left, right, waits, ground);
    }

    static Piece square(String label, double mm) {
        return piece(label, mm, SQUARE, SQUARE, false, false);
    }

    static BoardInHand board(int number, double mm, String... meantFor) {
        return BoardInHand.bought(number, "larch", Length.ofMm(mm), "A", Length.ofMm(10))
                .meantFor(List.of(meantFor));
    }

    static CuttingPlan plan(List<BoardInHand> boards, List<Piece> pieces) {
        return plan(boards, pieces, 100_000);
    }

    static CuttingPlan plan(List<BoardInHand> boards, List<Piece> pieces, long steps) {
        CuttingJob job =
                new CuttingJob(boards, pieces, List.of(LARCH), List.of(MITRE_SAW), WoodResolver.usualCutting());
        CuttingPlan plan = CuttingPlanner.plan(job, Budget.ofSteps(steps));
        assertThat(PlaneVerifier.faults(job, plan)).isEmpty();
        return plan;
    }

    @Test
    void whatTheBasketMeantStaysWhereItWas() {
        CuttingPlan plan =
                plan(List.of(board(1, 2400, "a"), board(2, 2400, "b")), List.of(square("a", 900), square("b", 900)));
        assertThat(plan.boards())
                .extracting(b -> b.number() + b.cuts().get(0).label())
                .containsExactly("1a", "2b");
    }

    @Test
    void aBoardThatCameShortIsPlannedAnewFromTheBoardsThatAreThere() {
        CuttingPlan plan =
                plan(List.of(board(1, 1500, "a", "b"), board(2, 2400)), List.of(square("a", 1400), square("b", 900)));
        assertThat(plan.uncut()).isEmpty();
        assertThat(plan.boards()).hasSize(2);
    }

    @Test
    void aPieceThatNoBoardGivesIsListedWithTheReason() {
        CuttingPlan plan = plan(List.of(board(1, 1000)), List.of(square("a", 1400)));
        assertThat(plan.uncut())
                .containsExactly(new CuttingPlan.Uncut("a", CuttingMessage.PIECE_NOT_CUT.of("a", "larch", 1400.0)));
    }

    @Test
    void piecesThatWaitKeepTheFarEndOfTheirBoardUncut() {
        Piece waits = piece("w", 800, SQUARE, SQUARE, true, false);
        CuttingPlan plan = plan(List.of(board(1, 2400, "w", "a")), List.of(waits, square("a", 900)));
        assertThat(plan.waiting()).containsExactly("w");
        assertThat(plan.boards().get(0).cuts())
                .extracting(CuttingPlan.Cut::label)
                .containsExactly("a");
        assertThat(plan.reserves()).containsExactly(new CuttingPlan.Reserve(1, "w", Length.ofMm(810)));
        assertThat(plan.boards().get(0).offcut().mm()).isGreaterThan(810);
    }

    @Test
    void boardsThatNothingIsCutFromAreHeldBack() {
        CuttingPlan plan = plan(List.of(board(1, 2400, "a"), board(2, 2400)), List.of(square("a", 900)));
        assertThat(plan.heldBack()).containsExactly(2);
    }

    @Test
    void aPieceForTheGroundTakesTheFactoryEnd() {
        Piece ground = piece("g", 500, SQUARE, SQUARE, false, true);
        CuttingPlan plan = plan(List.of(board(1, 2400, "a", "g")), List.of(square("a", 900), ground));
        assertThat(plan.boards().get(0).cuts())
                .extracting(CuttingPlan.Cut::label)
                .containsExactly("g", "a");
    }

    @Test
    void equalLengthsShareOneSettingOfTheStop() {
        CuttingPlan plan = plan(List.of(board(1, 2400)), List.of(square("a", 500), square("b", 700), square("c", 500)));
        // The first gives the board its fresh end.
        assertThat(plan.setUps()).hasSize(3);
        assertThat(plan.setUps().get(0).stop()).isEqualTo(Length.ZERO);
        assertThat(plan.setUps().get(1).labels()).containsExactly("b");
        assertThat(plan.setUps().get(2).labels()).containsExactlyInAnyOrder("a", "c");
        assertThat(plan.setUps().get(2).stop()).isEqualTo(Length.ofMm(500));
        assertThat(plan.setUps().get(2).byHand()).isNull();
    }

    @Test
    void everyBoardOfAPackIsInHand() {
        ShoppingProblem problem = ShoppingProblem.builder(
                        DemandMaker.of(List.of(square("a", 2000)), WoodResolver.usualCutting(), Length.ofMm(3)))
                .boards(List.of(new BoardOffer("A", "larch", 2400 * 320, 3000, 4, Integer.MAX_VALUE)))
                .kerfTicks(960)
                .trimTicks(3200)
                .build();
        ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(10_000));
        assertThat(BasketBoards.of(answer, Length.ofMm(10)))
                .extracting(BoardInHand::number)
                .containsExactly(1, 2, 3, 4);
    }

    @Test
    void piecesThatAreCutAlikeChangePlacesToLieOnOneBoard() {
        CuttingPlan plan = plan(
                List.of(board(1, 2400, "a", "b"), board(2, 2400, "c", "d")),
                List.of(square("a", 900), square("b", 700), square("c", 900), square("d", 700)));
        assertThat(plan.boards())
                .allMatch(b -> b.cuts().stream()
                                .map(CuttingPlan.Cut::length)
                                .distinct()
                                .count()
                        == 1);
        // 700 and 700 leave the longer offcut: 2400 - 20 - 2 x 703.
        assertThat(plan.boards().get(1).offcut()).isEqualTo(Length.ofMm(974));
    }

    @Test
    void aBoardThatIsHeldBackStaysWhole() {
        ShoppingProblem problem = ShoppingProblem.builder(DemandMaker.of(
                        List.of(square("a", 1000), square("b", 700)), WoodResolver.usualCutting(), Length.ofMm(3)))
                .boards(List.of(
                        new BoardOffer("A", "larch", 2400 * 320, 1000, 1, Integer.MAX_VALUE),
                        new BoardOffer("A", "larch", 1200 * 320, 600, 1, Integer.MAX_VALUE)))
                .kerfTicks(960)
                .trimTicks(3200)
                .build();
        List<Piece> pieces = List.of(square("a", 1000), square("b", 700));
        CuttingJob job = new CuttingJob(
                List.of(),
                pieces,
                List.of(LARCH),
                List.of(MITRE_SAW),
                WoodResolver.cutting(GivenCutting.builder().keepWhole(1).build()));
        HeldBoards.Bought bought = HeldBoards.buy(job, problem, Budget.ofSteps(10_000));
        assertThat(bought.met()).isTrue();
        // 1000 for both pieces and 600 for a board of 1200 mm, the shortest that could give the longer piece again.
        assertThat(bought.basket().answer().cost()).isEqualTo(1600);
        List<BoardInHand> boards = BasketBoards.of(bought.basket().answer(), Length.ofMm(10));
        CuttingPlan plan = plan(boards, pieces);
        assertThat(plan.heldBack()).hasSize(1);
        assertThat(boards.stream().filter(b -> plan.heldBack().contains(b.number())))
                .allMatch(b -> b.length().equals(Length.ofMm(1200)));
    }

    @Test
    void aHeldBoardIsNotCutEvenWhenAnotherCameShort() {
        BoardInHand held = BoardInHand.bought(2, "larch", Length.ofMm(2400), "A", Length.ofMm(10))
                .meantFor(List.of(Demand.heldBack("larch", 1, 1).label()));
        CuttingPlan plan = plan(List.of(board(1, 800, "a"), held), List.of(square("a", 900)));
        assertThat(plan.uncut()).hasSize(1);
        assertThat(plan.heldBack()).contains(2);
    }
}
