package borderwright.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenGround.GivenMembrane;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.given.GivenSurvey.GivenEdge;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.SiteClearance.Verdict;
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
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * A border of 5 x 2 m, A at the origin and going round anticlockwise, with one box from (1000, 500) to (3000, 1500): its bed
 * is the datum, its wall 450 mm high, and ground is dug 100 mm beyond it.
 */
class ClearanceFinderTest {
    private static final Ring BORDER = Ring.rectangle(0, 0, 5000, 2000);

    static GroundHeights plane(double atOrigin, double perMetreX, double perMetreY) {
        return new GroundHeights(List.of(
                new GroundHeights.Spot("A", new Point(0, 0), atOrigin, 3),
                new GroundHeights.Spot("B", new Point(5000, 0), atOrigin + 5 * perMetreX, 3),
                new GroundHeights.Spot("C", new Point(5000, 2000), atOrigin + 5 * perMetreX + 2 * perMetreY, 3),
                new GroundHeights.Spot("D", new Point(0, 2000), atOrigin + 2 * perMetreY, 3)));
    }

    static final Ring AT = Ring.rectangle(1000, 500, 3000, 1500);
    static final Box BOX = TestBoxes.box("F1", AT, 0, 450, 0);

    static GroundPlan plan(GroundHeights ground, GroundSurface surface, EdgeKind along, GivenNearby... near) {
        return plan(List.of(BOX), ground, surface, null, along, List.of(), near);
    }

    static GroundPlan plan(
            List<Box> boxes,
            GroundHeights ground,
            GroundSurface surface,
            @Nullable GivenMembrane sheet,
            EdgeKind along,
            List<GivenEdge> notes,
            GivenNearby... near) {
        List<OutlineEdge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(new OutlineEdge(
                    i == 0 ? along : EdgeKind.OPEN,
                    i == 0 ? SurveyResolver.gap(along).mm() : 0,
                    0,
                    0));
        }
        GroundSpec spec = GroundResolver.resolve(GivenGround.builder()
                .surface(surface)
                .gravel(Length.ofMm(50))
                .gravelBeyondWalls(Length.ofMm(100))
                .membrane(sheet)
                .keepClearOf(List.of(near))
                .build());
        SurveySpec survey = SurveyResolver.survey(
                GivenSurvey.builder(Names.of("A", "B", "C", "D")).edges(notes).build());
        return GroundWork.plan(
                boxes,
                new Outline(BORDER, List.of("A", "B", "C", "D"), edges, ground),
                survey,
                spec,
                SoilResolver.usual(),
                10,
                new LengthFormat(UnitSystem.METRIC));
    }

    static GroundPlan dug(GivenNearby... near) {
        return plan(plane(150, 0, 0), GroundSurface.BARE_EARTH, EdgeKind.OPEN, near);
    }

    static GivenNearby.Builder at(NearbyKind kind, double along, double into) {
        return GivenNearby.builder(kind, Names.of("A", "B"), Length.ofMm(along)).inFromEdge(Length.ofMm(into));
    }

    /** On level ground at the bed, dug 50 mm deep for its gravel. */
    static GroundPlan level(List<Box> boxes, @Nullable GivenMembrane sheet, GivenNearby... near) {
        return plan(boxes, plane(0, 0, 0), GroundSurface.BARE_EARTH, sheet, EdgeKind.OPEN, List.of(), near);
    }

    private static Box off(double mm) {
        return TestBoxes.box("F1", Ring.rectangle(1000, mm, 3000, mm + 800), 0, 450, 0);
    }

    static List<String> codes(GroundPlan plan) {
        return plan.unmet().stream().map(Problem::code).toList();
    }

    @Test
    void whatABoxStandsOverIsToldWithItsLength() {
        GroundPlan plan = level(
                List.of(BOX),
                null,
                at(NearbyKind.DRAIN, 0, 1000)
                        .endsAt(Length.ofMm(5000))
                        .depth(Length.ofMm(900))
                        .build());
        assertThat(plan.standsOver()).hasSize(1);
        assertThat(plan.standsOver().get(0).box()).isEqualTo("F1");
        assertThat(plan.standsOver().get(0).lengthMm()).isCloseTo(2000, within(1e-6));
    }

    @Nested
    class Walls {
        @Test
        void soilBelowADampCourseIsARow() {
            GivenEdge house = new GivenEdge(Names.of("A", "B"), EdgeKind.HOUSE, null, Length.ofMm(600), null);
            GroundPlan plan = plan(
                    List.of(off(100)), plane(0, 0, 0), GroundSurface.BARE_EARTH, null, EdgeKind.OPEN, List.of(house));
            // Soil stays 30 mm below the rim at 450 mm.
            assertThat(plan.clearances())
                    .containsExactly(new SiteClearance(
                            "F1",
                            ClearanceMessage.CLEARANCE_FROM_DAMP_COURSE.of("A B"),
                            ClearanceMessage.CLEARANCE_OF_SOIL_BELOW.of(),
                            150,
                            180,
                            Verdict.HOLDS));
        }

        @Test
        void aFenceLeavesRoomForTheBow() {
            // A wall may bow 10 mm.
            GroundPlan close =
                    plan(List.of(off(8)), plane(0, 0, 0), GroundSurface.BARE_EARTH, null, EdgeKind.FENCE, List.of());
            assertThat(codes(close)).containsExactly("fence-bears");
            GroundPlan clear =
                    plan(List.of(off(10)), plane(0, 0, 0), GroundSurface.BARE_EARTH, null, EdgeKind.FENCE, List.of());
            assertThat(codes(clear)).isEmpty();
        }

        @Test
        void airKeepsCladdingDry() {
            GivenNearby cladding = at(NearbyKind.CLADDING, 0, 0)
                    .endsAt(Length.ofMm(5000))
                    .bottom(Length.ofMm(440))
                    .build();
            assertThat(codes(level(List.of(off(20)), null, cladding))).containsExactly("cladding", "cladding-air");
            assertThat(codes(level(List.of(off(50)), null, cladding))).containsExactly("cladding");
        }

        @Test
        void anAirBrickIsOpenWhenTheRimLiesBelowItOrTheBoxKeepsOff() {
            assertThat(codes(dug(at(NearbyKind.AIR_BRICK, 1500, 300)
                            .bottom(Length.ofMm(440))
                            .build())))
                    .containsExactly("air-brick");
            assertThat(codes(dug(at(NearbyKind.AIR_BRICK, 1500, 300)
                            .bottom(Length.ofMm(450))
                            .build())))
                    .isEmpty();
            assertThat(codes(dug(at(NearbyKind.AIR_BRICK, 1500, 200)
                            .bottom(Length.ofMm(100))
                            .build())))
                    .isEmpty();
            // Beside the box, not in front of it: 225 mm of brick end 275 mm before the box begins.
            GroundPlan beside = dug(
                    at(NearbyKind.AIR_BRICK, 500, 500).bottom(Length.ofMm(100)).build());
            assertThat(beside.clearances().get(0).gotMm()).isCloseTo(275, within(1e-6));
        }

        @Test
        void soilKeepsBelowCladdingNearby() {
            // Soil stands 50 mm below the rim at 450.
            GroundPlan plan = dug(at(NearbyKind.CLADDING, 0, 0.5)
                    .endsAt(Length.ofMm(5000))
                    .bottom(Length.ofMm(540))
                    .build());
            assertThat(plan.clearances().get(0).gotMm())
                    .isCloseTo(540 - 450 + SoilResolver.usual().belowRimMm(), within(1e-6));
            assertThat(codes(plan)).containsExactly("cladding");
            assertThat(codes(dug(at(NearbyKind.CLADDING, 0, 0)
                            .endsAt(Length.ofMm(5000))
                            .bottom(Length.ofMm(100))
                            .build())))
                    .isEmpty();
        }

        @Test
        void theGapToAFenceIsMeasured() {
            GroundPlan plan = plan(plane(0, 0, 0), GroundSurface.BARE_EARTH, EdgeKind.FENCE);
            assertThat(plan.clearances())
                    .containsExactly(new SiteClearance(
                            "F1",
                            ClearanceMessage.CLEARANCE_FROM_EDGE.of(EdgeKind.FENCE, "A B"),
                            ClearanceMessage.CLEARANCE_OF_WALL.of(),
                            20,
                            500,
                            Verdict.HOLDS));
        }
    }

    @Nested
    class Water {
        @Test
        void runsDownhillAndNotTowardsAHouse() {
            // Down 15 mm a metre towards C D.
            GroundPlan away = plan(plane(-20, 0, -15), GroundSurface.PAVING, EdgeKind.HOUSE);
            assertThat(away.clearances())
                    .anyMatch(c -> c.from().code() == ClearanceMessage.CLEARANCE_FROM_STANDING_WATER
                            && Math.abs(c.gotMm() - 15) < 1e-6
                            && c.verdict() == Verdict.HOLDS);
            assertThat(away.notes())
                    .extracting(English.METRIC::text)
                    .anyMatch(n -> n.contains("falls 1 in 67 towards C D"));
            assertThat(codes(away)).doesNotContain("run-off");
            GroundPlan towards = plan(plane(-50, 0, 15), GroundSurface.PAVING, EdgeKind.HOUSE);
            assertThat(codes(towards)).contains("run-off");
        }

        @Test
        void standsOnGroundThatFallsLessThanOneInEighty() {
            GroundPlan plan = plan(plane(-20, 0, -12), GroundSurface.PAVING, EdgeKind.OPEN);
            assertThat(plan.clearances())
                    .anyMatch(c -> c.from().code() == ClearanceMessage.CLEARANCE_FROM_STANDING_WATER
                            && c.verdict() == Verdict.NOT_SHOWN);
        }

        @Test
        void findsNoRoomUnderBoardsThatLieOnTheGround() {
            GroundPlan plan = plan(plane(-4, 0, 0), GroundSurface.PAVING, EdgeKind.OPEN);
            assertThat(plan.clearances())
                    .anyMatch(c -> c.what().code() == ClearanceMessage.CLEARANCE_OF_FEET
                            && c.verdict() == Verdict.DOES_NOT_HOLD);
        }
    }

    @Test
    void thingsOfOneKindAtOneEdgeAreToldApart() {
        GroundPlan one = dug(at(NearbyKind.GAS, 500, -3000).build());
        assertThat(one.near()).extracting(p -> English.METRIC.text(p.name())).containsExactly("the gas pipe at A B");
        GroundPlan two = dug(
                at(NearbyKind.GAS, 500, -3000).build(),
                at(NearbyKind.GAS, 4200, -3000).endsAt(Length.ofMm(4500)).build());
        assertThat(two.near())
                .extracting(p -> English.METRIC.text(p.name()))
                .containsExactly("the gas pipe at A B, 500 mm along it", "the gas pipe at A B, 4200 mm along it");
        Point from = two.near().get(1).from();
        assertThat(from.distanceMm(two.near().get(1).to())).isCloseTo(300, within(1e-9));
    }
}
