package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.CutSteps;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.CuttingPlanner;
import borderwright.engine.cutting.PlaneVerifier;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.garden.vocabulary.TiltSide;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Gardens of one to three boxes of any shape with corners of 45 to 315 degrees: no two of a garden's cards print alike, and
 * doing what the printed words say gives every piece as it stands in its box, ripped ones and floors as well. Slats that are notched are left
 * out: at an end a notch takes the corner away by which the end is compared.
 */
class CardsOfSeededGardensTest {
    private static final int GARDENS = 72;

    @ParameterizedTest
    @CsvSource({
        "MITRE_SAW, LEFT, METRIC",
        "MITRE_SAW, RIGHT, METRIC",
        "MITRE_SAW, BOTH, IMPERIAL",
        "TABLE_SAW, LEFT, METRIC",
        "TABLE_SAW, RIGHT, IMPERIAL",
        "CIRCULAR_SAW, LEFT, METRIC",
        "HANDSAW, BOTH, METRIC"
    })
    void everyPieceComesOutOfItsPrintedCards(SawKind kind, TiltSide tilts, UnitSystem units) {
        SplittableRandom random = new SplittableRandom(31 * kind.ordinal() + tilts.ordinal());
        int slanted = 0;
        int ripped = 0;
        for (int i = 0; i < GARDENS; i++) {
            SawSpec saw = saw(kind, tilts, random);
            List<Piece> pieces = pieces(saw, units, random);
            CuttingJob job = BoughtForThree.job(pieces, Footprints.SECTIONS, saw);
            CuttingPlan plan = PlaneVerifier.verified(job, CuttingPlanner.plan(job, Budget.ofSteps(1000)));
            CutFromPaper reader = CutFromPaper.of(pieces, Footprints.SECTIONS, units);
            assertThat(plan.setUps().stream().map(setUp -> CardsOnPaperTest.settings(reader.card(setUp, plan))))
                    .as("garden %d", i)
                    .doesNotHaveDuplicates();
            assertThat(plan.uncut()).as("garden %d", i).isEmpty();
            assertThat(reader.cut(plan)).as("garden %d", i).isEqualTo(pieces.size());
            ripped += (int) pieces.stream().filter(p -> p.rip() != null).count();
            slanted += (int) pieces.stream()
                    .filter(p -> !p.left().isSquare() || !p.right().isSquare())
                    .count();
        }
        assertThat(slanted).isGreaterThan(GARDENS);
        assertThat(ripped > 0).as("ripped %d", ripped).isEqualTo(kind == SawKind.TABLE_SAW);
    }

    private static SawSpec saw(SawKind kind, TiltSide tilts, SplittableRandom random) {
        return WoodResolver.saw(GivenSaw.builder("saw", kind)
                .tilts(tilts)
                .widestBoard(Length.ofMm(600))
                .thickestBoard(Length.ofMm(90))
                .shortestPiece(Length.ofMm(10))
                .lengthStop(random.nextBoolean())
                .build());
    }

    private static List<Piece> pieces(SawSpec saw, UnitSystem units, SplittableRandom random) {
        double step = units == UnitSystem.METRIC ? 1 : 25.4 / 16;
        BuildMeans means =
                new BuildMeans(Footprints.SECTIONS, List.of(saw), Map.of(), units, new CutSteps(Length.ofMm(step)));
        CornerStyle corners = random.nextBoolean() ? CornerStyle.LAPPED : CornerStyle.MITRED;
        List<Piece> pieces = new ArrayList<>();
        int boxes = 1 + random.nextInt(3);
        for (int b = 0; b < boxes; b++) {
            Ring ring = Footprints.random(random);
            Box box = BoxBuilder.build(
                    named(
                            (char) ('F' + b),
                            Footprints.plan(
                                    ring,
                                    Footprints.dividers(ring, random),
                                    310,
                                    random.nextInt(3) == 0 ? 120 : 0,
                                    random.nextBoolean())),
                    Footprints.rules(Footprints.LARCH.name(), Footprints.BATTEN.name(), corners),
                    means);
            box.pieces().stream().filter(piece -> piece.notches().isEmpty()).forEach(pieces::add);
        }
        return pieces;
    }

    /** The same plan with planters of another letter. */
    private static FootprintPlan named(char letter, FootprintPlan plan) {
        return FootprintPlan.builder()
                .name(plan.name().replace('F', letter))
                .run(plan.run())
                .outline(plan.outline())
                .sides(plan.sides())
                .dividers(plan.dividers())
                .planters(plan.planters().stream()
                        .map(name -> name.replace('F', letter))
                        .toList())
                .bedMm(plan.bedMm())
                .heightMm(plan.heightMm())
                .platformMm(plan.platformMm())
                .capped(plan.capped())
                .build();
    }
}
