package borderwright.engine.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.SawSetting.CutFor;
import borderwright.engine.cutting.SawSetting.FaceUp;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.garden.vocabulary.TiltSide;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Doing what the cards say, and no more, gives every piece of a box as it stands there, and never its mirror image. */
class CardsCutThePlanTest {
    private static final int BOXES = 170;
    /** Rounding to ticks and hair of nearly square ends. */
    private static final double SAME_MM = 0.06;

    @ParameterizedTest(name = "a blade that tilts {0}")
    @EnumSource(TiltSide.class)
    void everyPieceComesOutAsItStandsInTheBox(TiltSide tilts) {
        SplittableRandom random = new SplittableRandom(tilts.ordinal());
        SawSpec saw = WoodResolver.saw(GivenSaw.builder("saw", SawKind.MITRE_SAW)
                .tilts(tilts)
                .widestBoard(Length.ofMm(600))
                .thickestBoard(Length.ofMm(90))
                .shortestPiece(Length.ofMm(10))
                .lengthStop(random.nextBoolean())
                .build());
        BuildMeans means = new BuildMeans(Footprints.SECTIONS, List.of(saw), Map.of(), UnitSystem.METRIC);
        int slanted = 0;
        for (int i = 0; i < BOXES; i++) {
            Ring ring = Footprints.random(random);
            Box box = BoxBuilder.build(
                    Footprints.plan(ring, Footprints.dividers(ring, random), 310, 0, random.nextBoolean()),
                    Footprints.rules(
                            Footprints.LARCH.name(),
                            Footprints.BATTEN.name(),
                            random.nextBoolean() ? CornerStyle.LAPPED : CornerStyle.MITRED),
                    means);
            CuttingJob job = job(box, saw);
            CuttingPlan plan = PlaneVerifier.verified(job, CuttingPlanner.plan(job, Budget.ofSteps(1000)));
            slanted += checked(plan, job, "tilts " + tilts + " box " + i);
        }
        assertThat(slanted).isGreaterThan(BOXES);
    }

    /** One board for every three pieces, so that they nest and share cuts. */
    private static CuttingJob job(Box box, SawSpec saw) {
        List<Piece> pieces = box.pieces().stream()
                .filter(p -> p.notches().isEmpty() && p.rip() == null)
                .toList();
        Map<String, List<Piece>> bySection = new HashMap<>();
        pieces.forEach(p ->
                bySection.computeIfAbsent(p.section(), k -> new ArrayList<>()).add(p));
        List<BoardInHand> boards = new ArrayList<>();
        bySection.forEach((section, all) -> {
            for (int from = 0; from < all.size(); from += 3) {
                List<Piece> here = all.subList(from, Math.min(from + 3, all.size()));
                double mm = here.stream().mapToDouble(p -> p.length().mm() + 20).sum() + 40;
                boards.add(BoardInHand.bought(boards.size() + 1, section, Length.ofMm(mm), "A", Length.ofMm(10))
                        .meantFor(here.stream().map(Piece::label).toList()));
            }
        });
        return new CuttingJob(boards, pieces, Footprints.SECTIONS, List.of(saw), WoodResolver.usualCutting());
    }

    /** Cuts every board by the cards; how many pieces had a slanted end. */
    private static int checked(CuttingPlan plan, CuttingJob job, String where) {
        Map<String, Piece> pieces = new HashMap<>();
        job.pieces().forEach(p -> pieces.put(p.label(), p));
        assertThat(plan.setUps().stream().map(CardsCutThePlanTest::printed)).doesNotHaveDuplicates();
        assertThat(plan.uncut()).as(where).isEmpty();
        int slanted = 0;
        for (CuttingPlan.BoardCuts board : plan.boards()) {
            CuttingPlan.SetUp before = null;
            FaceUp beforeDrawn = FaceUp.EITHER;
            for (CuttingPlan.Cut cut : board.cuts()) {
                Piece piece = pieces.get(cut.label());
                SectionSpec section = job.section(piece.section());
                CutAsTheCardSays wood = CutAsTheCardSays.board(
                        board.length().mm(),
                        section.width().mm(),
                        section.thickness().mm());
                CuttingPlan.SetUp length = plan.setUps().get(cut.setUp());
                CuttingPlan.SetUp first = cut.sharesCut() ? before : freshEnd(plan, cut.label());
                // The cut before frees this board's left end too: what lies right of it is the rest.
                FaceUp drawn = cut.turnedOver() ? FaceUp.INNER : FaceUp.OUTER;
                wood = wood.freshEnd(first, cut.sharesCut() ? beforeDrawn : drawn);
                wood = wood.toLength(
                        length,
                        drawn,
                        length.stop().ticks() > 0
                                ? length.stop().mm()
                                : cut.length().mm());
                isThePiece(wood, piece, section, where);
                slanted += piece.left().isSquare() && piece.right().isSquare() ? 0 : 1;
                before = length;
                beforeDrawn = drawn;
            }
        }
        return slanted;
    }

    private static CuttingPlan.SetUp freshEnd(CuttingPlan plan, String label) {
        return plan.setUps().stream()
                .filter(s ->
                        s.setting().cutFor() == CutFor.FRESH_END && s.labels().contains(label))
                .findFirst()
                .orElseThrow();
    }

    /** All that a card prints of how the saw is set. */
    private static String printed(CuttingPlan.SetUp card) {
        return card.saw() + card.kind() + card.setting() + card.stop() + card.byHand();
    }

    private static void isThePiece(CutAsTheCardSays wood, Piece piece, SectionSpec section, String where) {
        double[] stands = asItStands(piece, section);
        double least = Double.POSITIVE_INFINITY;
        for (double[] way : wood.everyWayRound()) {
            double off = 0;
            for (int c = 0; c < 8; c++) {
                off = Math.max(off, Math.abs(way[c] - stands[c]));
            }
            least = Math.min(least, off);
        }
        assertThat(least).as("%s piece %s", where, piece.label()).isLessThan(SAME_MM);
    }

    /**
     * Where the piece ends at its four long edges, from its place in the box: marked face up, left end left, first its left
     * end and then its right one, at (near, down), (near, up), (far, down), (far, up).
     */
    private static double[] asItStands(Piece piece, SectionSpec section) {
        if (piece.alongMm().z() == 1) {
            double mm = piece.place().heightMm();
            return new double[] {0, 0, 0, 0, mm, mm, mm, mm};
        }
        Point along = piece.alongMm().level();
        List<Point> corners = piece.place().plan().corners();
        double lowW =
                corners.stream().mapToDouble(p -> p.dot(along.left())).min().orElseThrow();
        double highW =
                corners.stream().mapToDouble(p -> p.dot(along.left())).max().orElseThrow();
        double lowS = corners.stream().mapToDouble(p -> p.dot(along)).min().orElseThrow();
        double middleW = (lowW + highW) / 2;
        double[] low =
                ends(corners.stream().filter(p -> p.dot(along.left()) < middleW).toList(), along, lowS);
        double[] high =
                ends(corners.stream().filter(p -> p.dot(along.left()) > middleW).toList(), along, lowS);
        boolean flat = Math.abs(piece.place().heightMm() - section.thickness().mm()) < 1e-6
                && Math.abs(highW - lowW - section.width().mm()) < 1e-6;
        // On edge the marked face is the one with the lower w, up on the saw; flat it is the top, and the lower w lies
        // near.
        return flat
                ? new double[] {low[0], low[0], high[0], high[0], low[1], low[1], high[1], high[1]}
                : new double[] {high[0], low[0], high[0], low[0], high[1], low[1], high[1], low[1]};
    }

    private static double[] ends(List<Point> line, Point along, double from) {
        return new double[] {
            line.stream().mapToDouble(p -> p.dot(along)).min().orElseThrow() - from,
            line.stream().mapToDouble(p -> p.dot(along)).max().orElseThrow() - from
        };
    }
}
