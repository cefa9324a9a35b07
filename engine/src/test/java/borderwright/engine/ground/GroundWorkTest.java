package borderwright.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.ground.DugSoil;
import borderwright.engine.garden.vocabulary.ground.GravelBed;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class GroundWorkTest {
    private static final Ring BORDER = Ring.rectangle(0, 0, 5000, 2000);

    private static Outline outline(GroundHeights ground) {
        List<OutlineEdge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(new OutlineEdge(EdgeKind.OPEN, 0, 0, 0));
        }
        return new Outline(BORDER, List.of("A", "B", "C", "D"), edges, ground);
    }

    private static GroundHeights level(double mm) {
        return new GroundHeights(List.of(new GroundHeights.Spot("A", new Point(0, 0), mm, 3)));
    }

    private static GroundSpec spec(GroundSurface surface, @Nullable GravelBed bed) {
        return GroundResolver.resolve(GivenGround.builder()
                .surface(surface)
                .bed(bed)
                .gravel(Length.ofMm(50))
                .gravelBeyondWalls(Length.ofMm(100))
                .skip(1.0)
                .build());
    }

    private static GroundPlan plan(
            List<Box> boxes, GroundHeights ground, GroundSpec spec, GivenSurvey.GivenEdge... edges) {
        SurveySpec survey = SurveyResolver.survey(GivenSurvey.builder(Names.of("A", "B", "C", "D"))
                .edges(List.of(edges))
                .build());
        return GroundWork.plan(
                boxes, outline(ground), survey, spec, SoilResolver.usual(), 10, new LengthFormat(UnitSystem.METRIC));
    }

    private static Box box(String name, double x0, double x1, double bedMm) {
        return TestBoxes.box(name, Ring.rectangle(x0, 500, x1, 1500), bedMm, 450, 0);
    }

    @Nested
    class Volumes {
        @Test
        void ofALawnDugLevel() {
            // Dug area 2.2 x 1.2 m; ground 200 mm above the bed, 50 mm of turf off, gravel 50 mm below the bed.
            GroundPlan plan =
                    plan(List.of(box("F1", 1000, 3000, 0)), level(200), spec(GroundSurface.LAWN, GravelBed.WHOLE));
            assertThat(plan.areaM2()).isCloseTo(2.64, within(1e-9));
            assertThat(plan.spoil().turfM3()).isCloseTo(2.64 * 0.05, within(1e-9));
            assertThat(plan.spoil().dugM3()).isCloseTo(2.64 * 0.2, within(1e-9));
            assertThat(plan.gravelM3()).isCloseTo(2.64 * 0.05, within(1e-9));
            assertThat(plan.gravelLooseM3()).isCloseTo(2.64 * 0.05 * 1.3, within(1e-9));
            BoxGround box = plan.boxes().get(0);
            assertThat(box.corners()).allMatch(c -> Math.abs(c.cutMm() - 250) < 1e-6 && c.fillMm() == 0);
        }

        @Test
        void gravelFillsTheHollowsBelowTheLevelDugTo() {
            GroundPlan plan = plan(
                    List.of(box("F1", 1000, 3000, 0)), level(-80), spec(GroundSurface.BARE_EARTH, GravelBed.WHOLE));
            assertThat(plan.spoil().dugM3()).isZero();
            assertThat(plan.gravelM3()).isCloseTo(2.64 * 0.08, within(1e-9));
            assertThat(plan.boxes().get(0).madeUpM3()).isCloseTo(2.64 * 0.03, within(1e-9));
        }

        @Test
        void underTheWallsOnlyTheStripIsDugAndTheRestLeftStanding() {
            GroundPlan plan = plan(
                    List.of(box("F1", 1000, 3000, 0)),
                    level(200),
                    spec(GroundSurface.BARE_EARTH, GravelBed.UNDER_WALLS));
            double inside = (2.0 - 0.05 - 0.2) * (1.0 - 0.05 - 0.2);
            BoxGround box = plan.boxes().get(0);
            assertThat(box.dugM3()).isCloseTo((2.64 - inside) * 0.25, within(1e-9));
            assertThat(box.gravelM3()).isCloseTo((2.64 - inside) * 0.05, within(1e-9));
            assertThat(box.leftM3()).isCloseTo(inside * 0.2, within(1e-9));
        }

        @Test
        void noGroundIsCountedTwiceNorOutsideTheBorder() {
            List<Box> boxes = List.of(box("F1", 20, 2000, 0), box("F2", 2020, 4000, -150), box("F3", 4120, 4990, -150));
            GroundPlan plan = plan(boxes, level(0), spec(GroundSurface.BARE_EARTH, GravelBed.WHOLE));
            // Together: from the border's left edge to its right edge, all but nothing between; 1.2 m deep.
            assertThat(plan.areaM2()).isCloseTo(5.0 * 1.2, within(1e-9));
            assertThat(plan.boxes().get(1).areaM2()).isGreaterThan(1.98 * 1.2);
        }
    }

    @Nested
    class Moving {
        @Test
        @DisplayName("sand: 100 in place is 111 loose (NAVEDTRA, excerpt of table 10-1)")
        void swell() {
            assertThat(100 * Spoil.swell(DugSoil.SAND)).isCloseTo(111, within(0.5));
        }

        @Test
        @DisplayName(
                "6111.11 yd3 in place at swell 1.2987 are 7936.5 loose: 662 loads of 12 (worked problem, loads rounded up)")
        void loadsAreRoundedUp() {
            assertThat((int) Math.ceil(6111.11 * 3000 / 2310 / 12)).isEqualTo(662);
            GroundSpec clay = GroundResolver.resolve(GivenGround.builder()
                    .surface(GroundSurface.BARE_EARTH)
                    .kind(DugSoil.CLAY)
                    .barrow(65.0)
                    .skip(4.5)
                    .build());
            Spoil spoil = Spoil.of(0, 10, clay);
            assertThat(spoil.looseM3()).isCloseTo(14.3, within(1e-9));
            assertThat(spoil.barrows()).isEqualTo(220);
            assertThat(spoil.skips()).isEqualTo(4);
        }
    }

    @Nested
    class HardGround {
        @Test
        void nothingIsDugAndFeetLevelTheBox() {
            GroundPlan plan = plan(List.of(box("F1", 1000, 3000, 10)), level(-12), spec(GroundSurface.PAVING, null));
            assertThat(plan.spoil().movedM3()).isZero();
            assertThat(plan.gravelM3()).isZero();
            BoxGround box = plan.boxes().get(0);
            // 2 m sides take 4 feet each from corner to next, 1 m sides 2.
            assertThat(box.feet()).hasSize(12).allMatch(foot -> Math.abs(foot.heightMm() - 22) < 1e-6);
        }
    }

    @Nested
    class Damp {
        private final GivenSurvey.GivenEdge house =
                new GivenSurvey.GivenEdge(Names.of("A", "B"), EdgeKind.HOUSE, null, Length.ofMm(400), null);

        @Test
        void soilOverTheDampCourseIsSaidWithItsNumbers() {
            Box near = TestBoxes.box("F1", Ring.rectangle(1000, 100, 3000, 900), 0, 450, 0);
            GroundPlan plan = plan(List.of(near), level(0), spec(GroundSurface.BARE_EARTH, null), house);
            assertThat(plan.unmet()).extracting(Problem::code).containsExactly("damp-course");
            assertThat(plan.unmet().get(0).sentence(English.METRIC))
                    .isEqualTo("Soil in F1 would stand 20 mm above the damp-proof course of A B, 100 mm from the wall."
                            + " Keep it at least 150 mm below. Make the wall 170 mm lower, fill it less, or keep"
                            + " the box 500 mm off. Ask a builder who knows the house.");
        }

        @Test
        void farOffNothingIsSaid() {
            Box far = TestBoxes.box("F1", Ring.rectangle(1000, 600, 3000, 1500), 0, 450, 0);
            GroundPlan plan = plan(List.of(far), level(0), spec(GroundSurface.BARE_EARTH, null), house);
            assertThat(plan.unmet()).isEmpty();
        }

        @Test
        void aHouseWithoutItsLevelIsNotShownToHold() {
            Box near = TestBoxes.box("F1", Ring.rectangle(1000, 100, 3000, 900), 0, 450, 0);
            GroundPlan plan = plan(
                    List.of(near),
                    level(0),
                    spec(GroundSurface.BARE_EARTH, null),
                    GivenSurvey.GivenEdge.of(Names.of("A", "B"), EdgeKind.HOUSE));
            assertThat(plan.unmet()).isEmpty();
            assertThat(plan.notes())
                    .extracting(English.METRIC::text)
                    .anyMatch(note -> note.startsWith("Not shown to hold: soil in F1"));
        }
    }
}
