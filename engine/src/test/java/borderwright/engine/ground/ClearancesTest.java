package borderwright.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.buildup.Box;
import borderwright.engine.garden.EdgeKind;
import borderwright.engine.garden.GroundWish;
import borderwright.engine.garden.GroundWish.Surface;
import borderwright.engine.garden.Names;
import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.NearbyThing.Kind;
import borderwright.engine.garden.SoilWish;
import borderwright.engine.garden.SurveyNotes;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.Clearance.Verdict;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Ground;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * A border of 5 x 2 m, A at the origin and going round anticlockwise, with one box from (1000, 500) to (3000, 1500): its bed
 * is the datum, its wall 450 mm high, and ground is dug 100 mm beyond it.
 */
class ClearancesTest {
    private static final Ring BORDER = Ring.rectangle(0, 0, 5000, 2000);

    private static Ground plane(double atOrigin, double perMetreX, double perMetreY) {
        return new Ground(List.of(
                new Ground.Spot("A", new Point(0, 0), atOrigin, 3),
                new Ground.Spot("B", new Point(5000, 0), atOrigin + 5 * perMetreX, 3),
                new Ground.Spot("C", new Point(5000, 2000), atOrigin + 5 * perMetreX + 2 * perMetreY, 3),
                new Ground.Spot("D", new Point(0, 2000), atOrigin + 2 * perMetreY, 3)));
    }

    private static GroundPlan plan(Ground ground, Surface surface, EdgeKind along, NearbyThing... near) {
        List<OutlineEdge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(new OutlineEdge(i == 0 ? along : EdgeKind.OPEN, i == 0 ? along.habitGapMm() : 0, 0, 0));
        }
        GroundWish wish = new GroundWish(
                surface,
                null,
                null,
                null,
                Length.ofMm(50),
                Length.ofMm(100),
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(near));
        Box box = TestBoxes.box("F1", Ring.rectangle(1000, 500, 3000, 1500), 0, 450, 0);
        SurveyNotes survey = new SurveyNotes(Names.of("A", "B", "C", "D"), null, null, List.of(), List.of(), null);
        return GroundWork.plan(
                List.of(box),
                new Outline(BORDER, List.of("A", "B", "C", "D"), edges, ground),
                survey,
                wish,
                SoilWish.HABIT,
                new LengthFormat(UnitSystem.METRIC));
    }

    private static GroundPlan dug(NearbyThing... near) {
        return plan(plane(150, 0, 0), Surface.SOIL, EdgeKind.OPEN, near);
    }

    private static NearbyThing thing(
            Kind kind,
            double along,
            double into,
            @Nullable Double to,
            @Nullable Double trunk,
            @Nullable Double depth,
            @Nullable Double bottom) {
        return new NearbyThing(
                kind,
                Names.of("A", "B"),
                Length.ofMm(along),
                to == null ? null : Length.ofMm(to),
                Length.ofMm(into),
                null,
                trunk == null ? null : Length.ofMm(trunk),
                depth == null ? null : Length.ofMm(depth),
                bottom == null ? null : Length.ofMm(bottom));
    }

    private static List<String> codes(GroundPlan plan) {
        return plan.unmet().stream().map(Problem::code).toList();
    }

    @Nested
    class Roots {
        @Test
        void reachTwelveTrunksAndNothingIsDugThere() {
            // 2 m outside the middle of A B: the dug ground begins 400 mm inside.
            GroundPlan near = dug(thing(Kind.TREE, 2000, -2000, null, 250.0, null, null));
            Clearance row = near.clearances().get(0);
            assertThat(row.wantedMm()).isCloseTo(3000, within(1e-9));
            assertThat(row.gotMm()).isCloseTo(2400, within(1e-6));
            assertThat(row.verdict()).isEqualTo(Verdict.DOES_NOT_HOLD);
            assertThat(codes(near)).contains("tree-roots");
            GroundPlan thin = dug(thing(Kind.TREE, 2000, -2000, null, 200.0, null, null));
            assertThat(thin.clearances().get(0).verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(codes(thin)).isEmpty();
        }

        @Test
        void reachFifteenMetresAtTheMost() {
            GroundPlan plan = dug(thing(Kind.TREE, 2000, -14_000, null, 2000.0, null, null));
            assertThat(plan.clearances().get(0).wantedMm()).isEqualTo(15_000);
        }

        @Test
        void areLeftAloneWhereNothingIsDug() {
            GroundPlan plan = plan(
                    plane(-20, 0, -15),
                    Surface.PAVING,
                    EdgeKind.OPEN,
                    thing(Kind.TREE, 2000, 0, null, 250.0, null, null));
            assertThat(plan.clearances()).noneMatch(c -> c.from().contains("tree"));
        }
    }

    @Nested
    class Services {
        @Test
        void halfAMetreAwayNeedsNothing() {
            GroundPlan plan = dug(thing(Kind.GAS, 0, -100, 5000.0, null, null, null));
            assertThat(plan.clearances().get(0).gotMm()).isCloseTo(500, within(1e-6));
            assertThat(plan.clearances().get(0).verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(codes(plan)).isEmpty();
        }

        @Test
        void ofUnknownDepthIsNotShownToBeClear() {
            GroundPlan plan = dug(thing(Kind.ELECTRICITY, 0, 0, 5000.0, null, null, null));
            assertThat(plan.clearances().get(0).verdict()).isEqualTo(Verdict.NOT_SHOWN);
            assertThat(plan.notes()).anyMatch(n -> n.contains("electricity cable at A B") && n.contains("by hand"));
        }

        @Test
        void tooShallowStopsTheDigging() {
            // Ground 150 mm above the bed and 50 mm of gravel: 200 mm are dug.
            GroundPlan deep = dug(thing(Kind.WATER, 2000, 1000, null, null, 350.0, null));
            assertThat(deep.clearances().get(0).gotMm()).isCloseTo(150, within(1e-6));
            assertThat(deep.clearances().get(0).verdict()).isEqualTo(Verdict.NOT_SHOWN);
            assertThat(deep.notes()).anyMatch(n -> n.contains("stands over the water pipe"));
            GroundPlan shallow = dug(thing(Kind.WATER, 2000, 1000, null, null, 340.0, null));
            assertThat(shallow.clearances().get(0).verdict()).isEqualTo(Verdict.DOES_NOT_HOLD);
            assertThat(codes(shallow)).containsExactly("service-near");
        }
    }

    @Nested
    class Walls {
        @Test
        void anAirBrickIsOpenWhenTheRimLiesBelowItOrTheBoxKeepsOff() {
            assertThat(codes(dug(thing(Kind.AIR_BRICK, 1500, 300, null, null, null, 440.0))))
                    .containsExactly("air-brick");
            assertThat(codes(dug(thing(Kind.AIR_BRICK, 1500, 300, null, null, null, 450.0))))
                    .isEmpty();
            assertThat(codes(dug(thing(Kind.AIR_BRICK, 1500, 200, null, null, null, 100.0))))
                    .isEmpty();
            // Beside the box, not in front of it: 225 mm of brick end 275 mm before the box begins.
            GroundPlan beside = dug(thing(Kind.AIR_BRICK, 500, 500, null, null, null, 100.0));
            assertThat(beside.clearances().get(0).gotMm()).isCloseTo(275, within(1e-6));
        }

        @Test
        void soilKeepsBelowCladdingNearby() {
            // Soil stands 50 mm below the rim at 450.
            GroundPlan plan = dug(thing(Kind.CLADDING, 0, 0.5, 5000.0, null, null, 540.0));
            assertThat(plan.clearances().get(0).gotMm())
                    .isCloseTo(540 - 450 + SoilWish.HABIT.belowRimMm(), within(1e-6));
            assertThat(codes(plan)).containsExactly("cladding");
            assertThat(codes(dug(thing(Kind.CLADDING, 0, 0, 5000.0, null, null, 100.0))))
                    .isEmpty();
        }

        @Test
        void theGapToAFenceIsMeasured() {
            GroundPlan plan = plan(plane(0, 0, 0), Surface.SOIL, EdgeKind.FENCE);
            assertThat(plan.clearances())
                    .containsExactly(new Clearance("F1", "the fence A B", "wall", 20, 500, Verdict.HOLDS));
        }
    }

    @Nested
    class Water {
        @Test
        void runsDownhillAndNotTowardsAHouse() {
            // Down 15 mm a metre towards C D.
            GroundPlan away = plan(plane(-20, 0, -15), Surface.PAVING, EdgeKind.HOUSE);
            assertThat(away.clearances())
                    .anyMatch(c -> c.from().equals("standing water")
                            && Math.abs(c.gotMm() - 15) < 1e-6
                            && c.verdict() == Verdict.HOLDS);
            assertThat(away.notes()).anyMatch(n -> n.contains("falls 1 in 67 towards C D"));
            assertThat(codes(away)).doesNotContain("run-off");
            GroundPlan towards = plan(plane(-50, 0, 15), Surface.PAVING, EdgeKind.HOUSE);
            assertThat(codes(towards)).contains("run-off");
        }

        @Test
        void standsOnGroundThatFallsLessThanOneInEighty() {
            GroundPlan plan = plan(plane(-20, 0, -12), Surface.PAVING, EdgeKind.OPEN);
            assertThat(plan.clearances())
                    .anyMatch(c -> c.from().equals("standing water") && c.verdict() == Verdict.NOT_SHOWN);
        }

        @Test
        void findsNoRoomUnderBoardsThatLieOnTheGround() {
            GroundPlan plan = plan(plane(-4, 0, 0), Surface.PAVING, EdgeKind.OPEN);
            assertThat(plan.clearances())
                    .anyMatch(c -> c.what().contains("feet") && c.verdict() == Verdict.DOES_NOT_HOLD);
        }
    }

    @Test
    void movingATreeAwayNeverLessensItsClearance() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < 300; n++) {
            double along = random.nextDouble(-3000, 8000);
            double near = random.nextDouble(-4000, 0);
            double far = near - random.nextDouble(1, 3000);
            double before = dug(thing(Kind.TREE, along, near, null, 100.0, null, null))
                    .clearances()
                    .get(0)
                    .gotMm();
            double after = dug(thing(Kind.TREE, along, far, null, 100.0, null, null))
                    .clearances()
                    .get(0)
                    .gotMm();
            assertThat(after).as("from (%f, %f) to %f", along, near, far).isGreaterThan(before);
        }
    }
}
