package borderwright.engine.cutting;

import static borderwright.engine.cutting.CuttingPlannerTest.SQUARE;
import static borderwright.engine.cutting.CuttingPlannerTest.board;
import static borderwright.engine.cutting.CuttingPlannerTest.piece;
import static borderwright.engine.cutting.CuttingPlannerTest.plan;
import static borderwright.engine.cutting.CuttingPlannerTest.square;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Which saw cuts what, and in which order boards come to it. */
class SawsOfAPlanTest {
    private static CuttingPlan planned(List<BoardInHand> boards, List<Piece> pieces, List<SawSpec> saws) {
        CuttingJob job = new CuttingJob(
                boards,
                pieces,
                List.of(WoodResolver.section("larch", Length.ofMm(25), Length.ofMm(150))),
                saws,
                WoodResolver.usualCutting());
        return PlaneVerifier.verified(job, CuttingPlanner.plan(job, Budget.ofSteps(10_000)));
    }

    @Test
    void theOrderInWhichSawsAreListedChangesNothing() {
        List<SawSpec> saws = new ArrayList<>();
        for (SawKind kind : SawKind.values()) {
            saws.add(WoodResolver.saw(GivenSaw.builder(kind.name(), kind)
                    .kerf(Length.ofMm(3))
                    .lengthStop(kind == SawKind.TABLE_SAW || kind == SawKind.MITRE_SAW)
                    .build()));
        }
        for (long seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                pieces.add(square("p" + i, 100 + random.nextInt(3500)));
            }
            List<BoardInHand> boards = List.of(
                    board(1, 4800, "p0"), board(2, 4800, "p1"), board(3, 4800, "p2"), board(4, 9600, "p3", "p4"));
            List<SawSpec> shuffled = new ArrayList<>(saws);
            Collections.shuffle(shuffled, random);
            assertThat(planned(boards, pieces, shuffled)).as("seed %s", seed).isEqualTo(planned(boards, pieces, saws));
        }
    }

    @Test
    void aPieceBeyondTheStopIsMarkedByHand() {
        CuttingPlan plan = plan(List.of(board(1, 4800)), List.of(square("a", 2600), square("b", 900)));
        assertThat(plan.setUps())
                .extracting(CuttingPlan.SetUp::stop)
                .containsExactly(Length.ZERO, Length.ofMm(900), Length.ZERO);
    }

    @Test
    void boardsAreNumberedAsTheyAreCut() {
        Piece waits = piece("w", 800, SQUARE, SQUARE, true, false);
        CuttingPlan plan = plan(
                List.of(board(1, 2400), board(2, 2400, "a"), board(3, 2400, "b", "w")),
                List.of(square("a", 700), square("b", 900), waits));
        CuttingPlan numbered = BoardNumbers.asCut(plan);
        assertThat(numbered.boards())
                .extracting(b -> b.number() + b.cuts().get(0).label())
                .containsExactly("1b", "2a");
        assertThat(numbered.heldBack()).containsExactly(3);
        assertThat(numbered.reservesOn(1))
                .extracting(CuttingPlan.Reserve::label)
                .containsExactly("w");
        assertThat(numbered.setUps()).isEqualTo(plan.setUps());
    }
}
