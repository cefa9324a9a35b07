package borderwright.engine.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import borderwright.engine.TestCuts;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenCutting;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.problem.FailedCheckException;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.BoardNest;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A verifier that never finds a fault checks nothing: plans are spoilt by a little and must be found out. */
class PlaneVerifierTest {
    private static final SectionSpec BAR =
            WoodResolver.section(GivenSection.builder("bar", Length.ofMm(40), Length.ofMm(100))
                    .bothFacesGood(true)
                    .build());
    private static final SawSpec SAW = WoodResolver.saw(
            GivenSaw.builder("saw", SawKind.MITRE_SAW).kerf(Length.ofMm(2)).build());
    private static final EndCut SQUARE = TestPieces.SQUARE;
    private static final EndCut BEVEL = TestCuts.of(45, 0, EndCut.LongPoint.MARKED_FACE, 40);
    private static final EndCut UNDER = TestCuts.of(45, 0, EndCut.LongPoint.HIDDEN_FACE, 40);
    private static final EndCut MITRE = TestCuts.of(0, 45, EndCut.LongPoint.UPPER_EDGE, 100);
    /** At 30 degrees each way a plane of slope tan 30 across the width, tan 30 / cos 30 = 2/3 through the thickness. */
    private static final EndCut COMPOUND = TestCuts.of(30, 30, EndCut.LongPoint.MARKED_FACE, 40 * 2 / 3.0);

    private static Piece piece(String label, EndCut left, EndCut right) {
        return TestPieces.piece("bar", label, 500, left, right);
    }

    /** Two pieces of 500 mm, the second starting {@code gapMm} after the long point of the first. */
    private static List<String> faults(
            Piece a, Piece b, double gapMm, boolean turned, boolean swapped, boolean shares, double boardMm) {
        return PlaneVerifier.faults(job(a, b, boardMm), plan(a, b, gapMm, turned, swapped, shares, boardMm));
    }

    private static BoardInHand board(double mm) {
        return BoardInHand.bought(1, "bar", Length.ofMm(mm), "A", Length.ZERO);
    }

    private static CuttingJob job(Piece a, Piece b, double boardMm) {
        return new CuttingJob(
                List.of(board(boardMm)),
                List.of(a, b),
                List.of(BAR),
                List.of(SAW),
                WoodResolver.cutting(GivenCutting.builder().trim(Length.ZERO).build()));
    }

    /** Which way a cut leans is left to the planner's own tests: slants are square here. */
    private static SawSetting setting(EndCut end) {
        return new SawSetting(
                end.tiltDeg(), end.fenceDeg(), SawSetting.Lean.NONE, SawSetting.FaceUp.EITHER, SawSetting.CutFor.PIECE);
    }

    private static CuttingPlan plan(
            Piece a, Piece b, double gapMm, boolean turned, boolean swapped, boolean shares, double boardMm) {
        List<CuttingPlan.SetUp> setUps = new ArrayList<>();
        EndCut last = swapped ? b.left() : b.right();
        setUps.add(new CuttingPlan.SetUp(1, "saw", null, setting(a.right()), Length.ZERO, List.of("a"), null));
        setUps.add(new CuttingPlan.SetUp(2, "saw", null, setting(last), Length.ZERO, List.of("b"), null));
        List<CuttingPlan.Cut> cuts = List.of(
                CuttingPlan.Cut.of("a", a.length()).build(),
                CuttingPlan.Cut.of("b", b.length())
                        .start(Length.ofMm(500 + gapMm))
                        .setUp(1)
                        .way(new BoardNest.Way(turned, swapped))
                        .sharesCut(shares)
                        .build());
        return new CuttingPlan(
                List.of(CuttingPlan.BoardCuts.of(board(boardMm)).cuts(cuts).build()),
                setUps,
                List.of(),
                List.of(),
                List.of());
    }

    @Test
    void squareEndsNeedOneKerf() {
        Piece a = piece("a", SQUARE, SQUARE);
        Piece b = piece("b", SQUARE, SQUARE);
        assertThat(faults(a, b, 2, false, false, false, 1002)).isEmpty();
        assertThat(faults(a, b, 1.9, false, false, false, 1100)).hasSize(1);
        assertThat(faults(a, b, 2, false, false, false, 1001.9)).hasSize(1);
    }

    @Test
    void parallelBevelsShareACutOfTheKerfOverTheCosine() {
        Piece a = piece("a", SQUARE, BEVEL);
        Piece b = piece("b", UNDER, SQUARE);
        double gap = 2 * Math.sqrt(2) - 40 + 0.005;
        assertThat(faults(a, b, gap, false, false, true, 1100)).isEmpty();
        assertThat(faults(a, b, gap - 0.1, false, false, false, 1100)).hasSize(1);
        assertThat(faults(a, b, gap + 1, false, false, true, 1100)).hasSize(1);
    }

    @Test
    void aBoardMustBeTurnedForBevelsOfOneHand() {
        Piece a = piece("a", SQUARE, BEVEL);
        Piece b = piece("b", BEVEL, SQUARE);
        double gap = 2 * Math.sqrt(2) - 40 + 0.005;
        assertThat(faults(a, b, gap, true, false, true, 1100)).isEmpty();
        assertThat(faults(a, b, gap, false, false, false, 1100)).isNotEmpty();
    }

    @Test
    void aMitreNestsEndForEnd() {
        Piece a = piece("a", SQUARE, MITRE);
        Piece b = piece("b", SQUARE, MITRE);
        double gap = 2 * Math.sqrt(2) - 100 + 0.005;
        assertThat(faults(a, b, gap, false, true, true, 1100)).isEmpty();
        assertThat(faults(a, b, gap, true, true, false, 1100)).isNotEmpty();
    }

    @Test
    void aCompoundCutTakesItsKerfOverBothCosines() {
        Piece a = piece("a", SQUARE, COMPOUND);
        Piece b = piece("b", SQUARE, SQUARE);
        double need = 2 / (Math.cos(Math.PI / 6) * Math.cos(Math.PI / 6));
        assertThat(faults(a, b, need + 0.005, false, false, false, 1100)).isEmpty();
        assertThat(faults(a, b, need - 0.01, false, false, false, 1100)).hasSize(1);
    }

    @Test
    void aBrokenPlanIsRefusedAndARightOneGivenBack() {
        Piece a = piece("a", SQUARE, SQUARE);
        Piece b = piece("b", SQUARE, SQUARE);
        CuttingPlan right = plan(a, b, 2, false, false, false, 1002);
        assertThat(PlaneVerifier.verified(job(a, b, 1002), right)).isSameAs(right);
        CuttingPlan broken = plan(a, b, 1.9, false, false, false, 1002);
        assertThatThrownBy(() -> PlaneVerifier.verified(job(a, b, 1002), broken))
                .isInstanceOf(FailedCheckException.class)
                .hasMessageContaining("1 a and b");
    }
}
