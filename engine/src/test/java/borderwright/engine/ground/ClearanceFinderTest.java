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
import borderwright.engine.garden.resolve.NearbyResolver;
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
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * A border of 5 x 2 m, A at the origin and going round anticlockwise, with one box from (1000, 500) to (3000, 1500): its bed
 * is the datum, its wall 450 mm high, and ground is dug 100 mm beyond it.
 */
class ClearanceFinderTest {
    private static final Ring BORDER = Ring.rectangle(0, 0, 5000, 2000);

    private static GroundHeights plane(double atOrigin, double perMetreX, double perMetreY) {
        return new GroundHeights(List.of(
                new GroundHeights.Spot("A", new Point(0, 0), atOrigin, 3),
                new GroundHeights.Spot("B", new Point(5000, 0), atOrigin + 5 * perMetreX, 3),
                new GroundHeights.Spot("C", new Point(5000, 2000), atOrigin + 5 * perMetreX + 2 * perMetreY, 3),
                new GroundHeights.Spot("D", new Point(0, 2000), atOrigin + 2 * perMetreY, 3)));
    }

    private static final Ring AT = Ring.rectangle(1000, 500, 3000, 1500);
    private static final Box BOX = TestBoxes.box("F1", AT, 0, 450, 0);

    private static GroundPlan plan(GroundHeights ground, GroundSurface surface, EdgeKind along, GivenNearby... near) {
        return plan(List.of(BOX), ground, surface, null, along, List.of(), near);
    }

    private static GroundPlan plan(
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
                new GivenSurvey(Names.of("A", "B", "C", "D"), null, null, notes, List.of(), null));
        return GroundWork.plan(
                boxes,
                new Outline(BORDER, List.of("A", "B", "C", "D"), edges, ground),
                survey,
                spec,
                SoilResolver.usual(),
                10,
                new LengthFormat(UnitSystem.METRIC));
    }

    private static GroundPlan dug(GivenNearby... near) {
        return plan(plane(150, 0, 0), GroundSurface.BARE_EARTH, EdgeKind.OPEN, near);
    }

    private static GivenNearby thing(
            NearbyKind kind,
            double along,
            double into,
            @Nullable Double to,
            @Nullable Double trunk,
            @Nullable Double depth,
            @Nullable Double bottom) {
        return GivenNearby.builder(kind, Names.of("A", "B"), Length.ofMm(along))
                .endsAt(to == null ? null : Length.ofMm(to))
                .inFromEdge(Length.ofMm(into))
                .trunk(trunk == null ? null : Length.ofMm(trunk))
                .depth(depth == null ? null : Length.ofMm(depth))
                .bottom(bottom == null ? null : Length.ofMm(bottom))
                .build();
    }

    /** On level ground at the bed, dug 50 mm deep for its gravel. */
    private static GroundPlan level(List<Box> boxes, @Nullable GivenMembrane sheet, GivenNearby... near) {
        return plan(boxes, plane(0, 0, 0), GroundSurface.BARE_EARTH, sheet, EdgeKind.OPEN, List.of(), near);
    }

    private static Box off(double mm) {
        return TestBoxes.box("F1", Ring.rectangle(1000, mm, 3000, mm + 800), 0, 450, 0);
    }

    private static SiteClearance row(GroundPlan plan, ClearanceMessage what) {
        return plan.clearances().stream()
                .filter(c -> c.what().code() == what)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> codes(GroundPlan plan) {
        return plan.unmet().stream().map(Problem::code).toList();
    }

    @Nested
    class Roots {
        @Test
        void reachTwelveTrunksAndNothingIsDugThere() {
            // 2 m outside the middle of A B: the dug ground begins 400 mm inside.
            GroundPlan near = dug(thing(NearbyKind.TREE, 2000, -2000, null, 250.0, null, null));
            SiteClearance row = near.clearances().get(0);
            assertThat(row.wantedMm()).isCloseTo(3000, within(1e-9));
            assertThat(row.gotMm()).isCloseTo(2400, within(1e-6));
            assertThat(row.verdict()).isEqualTo(Verdict.DOES_NOT_HOLD);
            assertThat(codes(near)).contains("tree-roots");
            GroundPlan thin = dug(thing(NearbyKind.TREE, 2000, -2000, null, 200.0, null, null));
            assertThat(thin.clearances().get(0).verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(codes(thin)).isEmpty();
        }

        @Test
        void reachFifteenMetresAtTheMost() {
            GroundPlan plan = dug(thing(NearbyKind.TREE, 2000, -14_000, null, 2000.0, null, null));
            assertThat(plan.clearances().get(0).wantedMm()).isEqualTo(15_000);
        }

        @Test
        void ofAGirthAreThoseOfItsTrunk() {
            GivenNearby girth = GivenNearby.builder(NearbyKind.TREE, Names.of("A", "B"), Length.ofMm(2000))
                    .inFromEdge(Length.ofMm(-2000))
                    .girth(Length.ofMm(785.398))
                    .build();
            assertThat(NearbyResolver.thing(girth).rootsMm()).isCloseTo(3000, within(0.01));
        }

        @Test
        void sayHowMuchOfTheDiggingLiesAmongThem() {
            // 900 mm from the dug ground: a segment of the circle of 960 mm lies in it,
            // 960^2 acos(900/960) - 900 sqrt(960^2 - 900^2) = 0.0269 m2.
            GroundPlan plan = level(List.of(BOX), null, thing(NearbyKind.TREE, 0, 1000, null, 80.0, null, null));
            assertThat(plan.unmet().get(0).what(English.METRIC))
                    .isEqualTo("The ground of F1 is dug 900 mm from the trunk of the tree at A B. Its main roots are"
                            + " taken to reach 960 mm, so 0.03 m2 of the digging lies among them.");
        }

        @Test
        void areNotDugIntoForPosts() {
            Box footed = TestBoxes.footed("F1", AT, 500);
            GroundPlan plan = level(List.of(footed), null, thing(NearbyKind.TREE, 0, 1000, null, 90.0, null, null));
            assertThat(row(plan, ClearanceMessage.CLEARANCE_OF_POST_HOLES).verdict())
                    .isEqualTo(Verdict.DOES_NOT_HOLD);
            assertThat(codes(plan)).containsExactly("tree-roots", "tree-roots");
        }

        @Test
        void areLeftAloneWhereNothingIsDug() {
            GroundPlan plan = plan(
                    plane(-20, 0, -15),
                    GroundSurface.PAVING,
                    EdgeKind.OPEN,
                    thing(NearbyKind.TREE, 2000, 0, null, 250.0, null, null));
            assertThat(plan.clearances())
                    .noneMatch(c -> English.METRIC.text(c.from()).contains("tree"));
        }
    }

    @Nested
    class Services {
        @Test
        void halfAMetreAwayNeedsNothing() {
            GroundPlan plan = dug(thing(NearbyKind.GAS, 0, -100, 5000.0, null, null, null));
            assertThat(plan.clearances().get(0).gotMm()).isCloseTo(500, within(1e-6));
            assertThat(plan.clearances().get(0).verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(codes(plan)).isEmpty();
        }

        @Test
        void ofUnknownDepthIsNotShownToBeClear() {
            GroundPlan plan = dug(thing(NearbyKind.ELECTRICITY, 0, 0, 5000.0, null, null, null));
            assertThat(plan.clearances().get(0).verdict()).isEqualTo(Verdict.NOT_SHOWN);
            assertThat(plan.notes())
                    .extracting(English.METRIC::text)
                    .anyMatch(n -> n.contains("electricity cable at A B") && n.contains("by hand"));
        }

        @Test
        void tooShallowStopsTheDigging() {
            // Ground 150 mm above the bed and 50 mm of gravel: 200 mm are dug.
            GroundPlan deep = dug(thing(NearbyKind.WATER, 2000, 1000, null, null, 350.0, null));
            assertThat(deep.clearances().get(0).gotMm()).isCloseTo(150, within(1e-6));
            assertThat(deep.clearances().get(0).verdict()).isEqualTo(Verdict.NOT_SHOWN);
            assertThat(deep.standsOver())
                    .containsExactly(
                            new GroundPlan.StandsOver("F1", deep.near().get(0).name(), 0));
            assertThat(English.METRIC.text(deep.near().get(0).name())).isEqualTo("the water pipe at A B");
            GroundPlan shallow = dug(thing(NearbyKind.WATER, 2000, 1000, null, null, 340.0, null));
            assertThat(shallow.clearances().get(0).verdict()).isEqualTo(Verdict.DOES_NOT_HOLD);
            assertThat(codes(shallow)).containsExactly("service-near");
        }
    }

    @Nested
    class Spikes {
        @Test
        void ofASheetStopNearWhatKillsUnlessItsDepthLeavesEnough() {
            GivenMembrane sheet = new GivenMembrane(null, null, null, null);
            List<Box> boxes = List.of(BOX);
            assertThat(codes(level(boxes, sheet, thing(NearbyKind.GAS, 0, 0, 5000.0, null, null, null))))
                    .containsExactly("service-near");
            // A peg goes 300 mm down and 150 mm stay: 450 mm will do, 449 mm will not.
            assertThat(codes(level(boxes, sheet, thing(NearbyKind.GAS, 0, 0, 5000.0, null, 450.0, null))))
                    .isEmpty();
            assertThat(codes(level(boxes, sheet, thing(NearbyKind.GAS, 0, 0, 5000.0, null, 449.0, null))))
                    .containsExactly("service-near");
            GroundPlan drain = level(boxes, sheet, thing(NearbyKind.DRAIN, 0, 0, 5000.0, null, null, null));
            assertThat(codes(drain)).isEmpty();
            assertThat(row(drain, ClearanceMessage.CLEARANCE_OF_PEGS_AND_PINS).verdict())
                    .isEqualTo(Verdict.NOT_SHOWN);
        }

        @Test
        void areOnlyPegsAtTheCornersWhereNoSheetIsPinned() {
            GroundPlan plan = level(List.of(BOX), null, thing(NearbyKind.GAS, 0, 0, 5000.0, null, null, null));
            assertThat(row(plan, ClearanceMessage.CLEARANCE_OF_PEGS_AND_PINS).gotMm())
                    .isCloseTo(500, within(1e-6));
            assertThat(row(plan, ClearanceMessage.CLEARANCE_OF_DUG_GROUND).gotMm())
                    .isCloseTo(400, within(1e-6));
        }

        @Test
        void andHolesKeepHalfAMetreFromAnyService() {
            Box footed = TestBoxes.footed("F1", AT, 500);
            GroundPlan plan = level(List.of(footed), null, thing(NearbyKind.WATER, 0, 200, 5000.0, null, 900.0, null));
            assertThat(row(plan, ClearanceMessage.CLEARANCE_OF_POST_HOLES).gotMm())
                    .isBetween(200.0, 400.0);
            assertThat(codes(plan)).containsExactly("service-near");
        }
    }

    @Test
    void whatABoxStandsOverIsToldWithItsLength() {
        GroundPlan plan = level(List.of(BOX), null, thing(NearbyKind.DRAIN, 0, 1000, 5000.0, null, 900.0, null));
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
            GivenNearby cladding = thing(NearbyKind.CLADDING, 0, 0, 5000.0, null, null, 440.0);
            assertThat(codes(level(List.of(off(20)), null, cladding))).containsExactly("cladding", "cladding-air");
            assertThat(codes(level(List.of(off(50)), null, cladding))).containsExactly("cladding");
        }

        @Test
        void anAirBrickIsOpenWhenTheRimLiesBelowItOrTheBoxKeepsOff() {
            assertThat(codes(dug(thing(NearbyKind.AIR_BRICK, 1500, 300, null, null, null, 440.0))))
                    .containsExactly("air-brick");
            assertThat(codes(dug(thing(NearbyKind.AIR_BRICK, 1500, 300, null, null, null, 450.0))))
                    .isEmpty();
            assertThat(codes(dug(thing(NearbyKind.AIR_BRICK, 1500, 200, null, null, null, 100.0))))
                    .isEmpty();
            // Beside the box, not in front of it: 225 mm of brick end 275 mm before the box begins.
            GroundPlan beside = dug(thing(NearbyKind.AIR_BRICK, 500, 500, null, null, null, 100.0));
            assertThat(beside.clearances().get(0).gotMm()).isCloseTo(275, within(1e-6));
        }

        @Test
        void soilKeepsBelowCladdingNearby() {
            // Soil stands 50 mm below the rim at 450.
            GroundPlan plan = dug(thing(NearbyKind.CLADDING, 0, 0.5, 5000.0, null, null, 540.0));
            assertThat(plan.clearances().get(0).gotMm())
                    .isCloseTo(540 - 450 + SoilResolver.usual().belowRimMm(), within(1e-6));
            assertThat(codes(plan)).containsExactly("cladding");
            assertThat(codes(dug(thing(NearbyKind.CLADDING, 0, 0, 5000.0, null, null, 100.0))))
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
    void movingAServiceAwayNeverLessensAClearanceNorWorsensAVerdict() {
        SplittableRandom random = new SplittableRandom(12);
        List<Box> boxes = List.of(BOX, TestBoxes.footed("F2", Ring.rectangle(3400, 500, 4800, 1500), 500));
        List<NearbyKind> kinds =
                Stream.of(NearbyKind.values()).filter(NearbyKind::isService).toList();
        for (int n = 0; n < 300; n++) {
            NearbyKind kind = kinds.get(random.nextInt(kinds.size()));
            Double depth = random.nextBoolean() ? random.nextDouble(200, 1100) : null;
            double along = random.nextDouble(0, 4000);
            double to = along + random.nextDouble(1, 3000);
            double near = random.nextDouble(-800, 400);
            double far = near - random.nextDouble(1, 800);
            GroundPlan before = level(boxes, null, thing(kind, along, near, to, null, depth, null));
            GroundPlan after = level(boxes, null, thing(kind, along, far, to, null, depth, null));
            String which = kind + " at depth " + depth + " from " + near + " to " + far;
            assertThat(after.unmet().size())
                    .as(which)
                    .isLessThanOrEqualTo(before.unmet().size());
            for (ClearanceMessage what :
                    List.of(ClearanceMessage.CLEARANCE_OF_POST_HOLES, ClearanceMessage.CLEARANCE_OF_PEGS_AND_PINS)) {
                assertThat(least(after, what)).as(which + ", " + what).isGreaterThanOrEqualTo(least(before, what));
            }
            assertThat(shown(after)).as(which).isGreaterThanOrEqualTo(shown(before));
        }
    }

    private static double least(GroundPlan plan, ClearanceMessage what) {
        return plan.clearances().stream()
                .filter(c -> c.what().code() == what)
                .mapToDouble(SiteClearance::gotMm)
                .min()
                .orElseThrow();
    }

    /** 0 where something does not hold, 1 where something is not shown to, 2 where all holds. */
    private static int shown(GroundPlan plan) {
        List<Verdict> verdicts =
                plan.clearances().stream().map(SiteClearance::verdict).toList();
        return verdicts.contains(Verdict.DOES_NOT_HOLD) ? 0 : verdicts.contains(Verdict.NOT_SHOWN) ? 1 : 2;
    }

    @Test
    void movingATreeAwayNeverLessensItsClearance() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < 300; n++) {
            double along = random.nextDouble(-3000, 8000);
            double near = random.nextDouble(-4000, 0);
            double far = near - random.nextDouble(1, 3000);
            double before = dug(thing(NearbyKind.TREE, along, near, null, 100.0, null, null))
                    .clearances()
                    .get(0)
                    .gotMm();
            double after = dug(thing(NearbyKind.TREE, along, far, null, 100.0, null, null))
                    .clearances()
                    .get(0)
                    .gotMm();
            assertThat(after).as("from (%f, %f) to %f", along, near, far).isGreaterThan(before);
        }
    }

    @Test
    void thingsOfOneKindAtOneEdgeAreToldApart() {
        GroundPlan one = dug(thing(NearbyKind.GAS, 500, -3000, null, null, null, null));
        assertThat(one.near()).extracting(p -> English.METRIC.text(p.name())).containsExactly("the gas pipe at A B");
        GroundPlan two = dug(
                thing(NearbyKind.GAS, 500, -3000, null, null, null, null),
                thing(NearbyKind.GAS, 4200, -3000, 4500.0, null, null, null));
        assertThat(two.near())
                .extracting(p -> English.METRIC.text(p.name()))
                .containsExactly("the gas pipe at A B, 500 mm along it", "the gas pipe at A B, 4200 mm along it");
        Point from = two.near().get(1).from();
        assertThat(from.distanceMm(two.near().get(1).to())).isCloseTo(300, within(1e-9));
    }
}
