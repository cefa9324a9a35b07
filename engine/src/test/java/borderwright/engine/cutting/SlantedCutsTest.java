package borderwright.engine.cutting;

import static borderwright.engine.cutting.CuttingPlannerTest.SQUARE;
import static borderwright.engine.cutting.CuttingPlannerTest.board;
import static borderwright.engine.cutting.CuttingPlannerTest.piece;
import static borderwright.engine.cutting.CuttingPlannerTest.plan;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestCuts;
import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.row.BoardInHand;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Cuts that are not square. */
class SlantedCutsTest {
    private static final EndCut BEVEL = TestCuts.of(45, 0, EndCut.LongPoint.MARKED_FACE, 25);

    private static final EndCut TOO_STEEP = TestCuts.outOfReach(50, 0, EndCut.LongPoint.MARKED_FACE, 30);

    @Test
    void aBevelTakesItsKerfOverTheCosineOfTheTilt() {
        // 3 mm / cos 45 deg = 4.2426 mm: 1.2426 mm more than a square cut, 398 ticks rounded up.
        Piece bevelled = piece("a", 1000, SQUARE, BEVEL, false, false);
        assertThat(DemandMaker.extraKerfTicks(bevelled, Length.ofMm(3))).isEqualTo(398);
        Piece other = piece("b", 1000, SQUARE, BEVEL, false, false);
        CuttingPlan plan = plan(List.of(board(1, 2400, "a", "b")), List.of(bevelled, other));
        CuttingPlan.Cut second = plan.boards().get(0).cuts().get(1);
        // The second lies turned over, so that one cut makes both bevels and they pass each other by 25 mm.
        assertThat(second.start().ticks()).isEqualTo(3200 + 320_000 - 8000 + 960 + 398);
    }

    @Test
    void aSetUpTellsWhichWayItsCutLeans() {
        // With the long point on the face up, the cut leans right going up at a right end, and left at a left end. The
        // blade
        // tilts to the left only: for the right end the board is turned over, and the cut leans left as well.
        CuttingPlan right = plan(List.of(board(1, 2400)), List.of(piece("a", 900, SQUARE, BEVEL, false, false)));
        assertThat(right.setUps())
                .extracting(CuttingPlan.SetUp::setting)
                .contains(
                        new SawSetting(45, 0, SawSetting.Lean.LEFT, SawSetting.FaceUp.INNER, SawSetting.CutFor.PIECE));
        CuttingPlan left = plan(List.of(board(1, 2400)), List.of(piece("a", 900, BEVEL, SQUARE, false, false)));
        assertThat(left.setUps())
                .extracting(CuttingPlan.SetUp::setting)
                .contains(new SawSetting(
                        45, 0, SawSetting.Lean.LEFT, SawSetting.FaceUp.OUTER, SawSetting.CutFor.FRESH_END));
    }

    @Test
    void aCutThatNoSawReachesSaysHowElse() {
        CuttingPlan plan = plan(List.of(board(1, 2400)), List.of(piece("a", 900, SQUARE, TOO_STEEP, false, false)));
        assertThat(plan.setUps())
                .anyMatch(s -> s.saw().equals("by hand")
                        && CutMessage.CUT_BEYOND_TILT
                                .of(50.0, "mitre saw", 45.0, 5.0)
                                .equals(s.byHand()));
    }

    @Test
    void aMitredBoardTurnedOverSharesOneCutWithItsNeighbour() {
        // Two trapezoids of 1200 mm, long points out, on a board that is 20 mm too short for them one after the other.
        Piece a = piece("a", 1200, BEVEL, BEVEL, false, false);
        Piece b = piece("b", 1200, BEVEL, BEVEL, false, false);
        CuttingPlan plan = plan(List.of(board(1, 2403)), List.of(a, b));
        assertThat(plan.uncut()).isEmpty();
        CuttingPlan.Cut second = plan.boards().get(0).cuts().get(1);
        assertThat(plan.boards().get(0).cuts())
                .filteredOn(CuttingPlan.Cut::turnedOver)
                .hasSize(1);
        assertThat(second.sharesCut()).isTrue();
        // Trim 10, piece 1200, less the bevel of 25 mm, and a kerf of 3 mm / cos 45 deg, rounded up to a tick.
        assertThat(second.start().ticks()).isEqualTo(320 * (10 + 1200 - 25) + 1358);
    }

    /** Few steps and more lists: a plan must hold wherever its search stops, and a longer one only leaves less waste. */
    @Test
    void piecesOfEveryKindLieClearOfEachOther() {
        for (long seed = 0; seed < 120; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Piece> pieces = new ArrayList<>();
            int count = random.nextInt(3, 16);
            for (int i = 0; i < count; i++) {
                pieces.add(piece(
                        "p" + i,
                        random.nextInt(160, 1400),
                        anyEnd(random),
                        anyEnd(random),
                        random.nextInt(8) == 0,
                        random.nextInt(4) == 0));
            }
            List<BoardInHand> boards = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                boards.add(board(i + 1, random.nextInt(1800, 4000)));
            }
            plan(boards, pieces, 2_000);
        }
    }

    private static EndCut anyEnd(SplittableRandom random) {
        double degrees = List.of(15.0, 22.5, 30.0, 45.0).get(random.nextInt(4));
        double tangent = StrictMath.tan(StrictMath.toRadians(degrees));
        boolean first = random.nextBoolean();
        return switch (random.nextInt(4)) {
            case 0 ->
                TestCuts.of(
                        degrees, 0, first ? EndCut.LongPoint.MARKED_FACE : EndCut.LongPoint.HIDDEN_FACE, 25 * tangent);
            case 1 ->
                TestCuts.of(
                        0, degrees, first ? EndCut.LongPoint.UPPER_EDGE : EndCut.LongPoint.LOWER_EDGE, 150 * tangent);
            case 2 -> TestCuts.of(degrees, 15, EndCut.LongPoint.MARKED_FACE, 25 * tangent);
            default -> SQUARE;
        };
    }
}
