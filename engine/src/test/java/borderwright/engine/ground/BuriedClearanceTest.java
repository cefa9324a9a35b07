package borderwright.engine.ground;

import static borderwright.engine.ground.ClearanceFinderTest.AT;
import static borderwright.engine.ground.ClearanceFinderTest.BOX;
import static borderwright.engine.ground.ClearanceFinderTest.at;
import static borderwright.engine.ground.ClearanceFinderTest.codes;
import static borderwright.engine.ground.ClearanceFinderTest.dug;
import static borderwright.engine.ground.ClearanceFinderTest.level;
import static borderwright.engine.ground.ClearanceFinderTest.plan;
import static borderwright.engine.ground.ClearanceFinderTest.plane;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.given.GivenGround.GivenMembrane;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.resolve.NearbyResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What lies below ground: roots, services, and the spikes that reach for them. */
class BuriedClearanceTest {
    private static SiteClearance row(GroundPlan plan, ClearanceMessage what) {
        return plan.clearances().stream()
                .filter(c -> c.what().code() == what)
                .findFirst()
                .orElseThrow();
    }

    @Nested
    class Roots {
        @Test
        void reachTwelveTrunksAndNothingIsDugThere() {
            // 2 m outside the middle of A B: the dug ground begins 400 mm inside.
            GroundPlan near =
                    dug(at(NearbyKind.TREE, 2000, -2000).trunk(Length.ofMm(250)).build());
            SiteClearance row = near.clearances().get(0);
            assertThat(row.wantedMm()).isCloseTo(3000, within(1e-9));
            assertThat(row.gotMm()).isCloseTo(2400, within(1e-6));
            assertThat(row.verdict()).isEqualTo(Verdict.DOES_NOT_HOLD);
            assertThat(codes(near)).contains("tree-roots");
            GroundPlan thin =
                    dug(at(NearbyKind.TREE, 2000, -2000).trunk(Length.ofMm(200)).build());
            assertThat(thin.clearances().get(0).verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(codes(thin)).isEmpty();
        }

        @Test
        void reachFifteenMetresAtTheMost() {
            GroundPlan plan = dug(
                    at(NearbyKind.TREE, 2000, -14_000).trunk(Length.ofMm(2000)).build());
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
            GroundPlan plan = level(
                    List.of(BOX),
                    null,
                    at(NearbyKind.TREE, 0, 1000).trunk(Length.ofMm(80)).build());
            assertThat(plan.unmet().get(0).what(English.METRIC))
                    .isEqualTo("The ground of F1 is dug 900 mm from the trunk of the tree at A B. Its main roots are"
                            + " taken to reach 960 mm, so 0.03 m2 of the digging lies among them.");
        }

        @Test
        void areNotDugIntoForPosts() {
            Box footed = TestBoxes.footed("F1", AT, 500);
            GroundPlan plan = level(
                    List.of(footed),
                    null,
                    at(NearbyKind.TREE, 0, 1000).trunk(Length.ofMm(90)).build());
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
                    at(NearbyKind.TREE, 2000, 0).trunk(Length.ofMm(250)).build());
            assertThat(plan.clearances())
                    .noneMatch(c -> English.METRIC.text(c.from()).contains("tree"));
        }
    }

    @Nested
    class Services {
        @Test
        void halfAMetreAwayNeedsNothing() {
            GroundPlan plan =
                    dug(at(NearbyKind.GAS, 0, -100).endsAt(Length.ofMm(5000)).build());
            assertThat(plan.clearances().get(0).gotMm()).isCloseTo(500, within(1e-6));
            assertThat(plan.clearances().get(0).verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(codes(plan)).isEmpty();
        }

        @Test
        void ofUnknownDepthIsNotShownToBeClear() {
            GroundPlan plan = dug(
                    at(NearbyKind.ELECTRICITY, 0, 0).endsAt(Length.ofMm(5000)).build());
            assertThat(plan.clearances().get(0).verdict()).isEqualTo(Verdict.NOT_SHOWN);
            assertThat(plan.notes())
                    .extracting(English.METRIC::text)
                    .anyMatch(n -> n.contains("electricity cable at A B") && n.contains("by hand"));
        }

        @Test
        void tooShallowStopsTheDigging() {
            // Ground 150 mm above the bed and 50 mm of gravel: 200 mm are dug.
            GroundPlan deep =
                    dug(at(NearbyKind.WATER, 2000, 1000).depth(Length.ofMm(350)).build());
            assertThat(deep.clearances().get(0).gotMm()).isCloseTo(150, within(1e-6));
            assertThat(deep.clearances().get(0).verdict()).isEqualTo(Verdict.NOT_SHOWN);
            assertThat(deep.standsOver())
                    .containsExactly(
                            new GroundPlan.StandsOver("F1", deep.near().get(0).name(), 0));
            assertThat(English.METRIC.text(deep.near().get(0).name())).isEqualTo("the water pipe at A B");
            GroundPlan shallow =
                    dug(at(NearbyKind.WATER, 2000, 1000).depth(Length.ofMm(340)).build());
            assertThat(shallow.clearances().get(0).verdict()).isEqualTo(Verdict.DOES_NOT_HOLD);
            assertThat(codes(shallow)).containsExactly("service-near");
        }
    }

    @Nested
    class Spikes {
        @Test
        void ofASheetStopNearWhatKillsUnlessItsDepthLeavesEnough() {
            GivenMembrane sheet = GivenMembrane.plain();
            List<Box> boxes = List.of(BOX);
            assertThat(codes(level(
                            boxes,
                            sheet,
                            at(NearbyKind.GAS, 0, 0).endsAt(Length.ofMm(5000)).build())))
                    .containsExactly("service-near");
            // A peg goes 300 mm down and 150 mm stay: 450 mm will do, 449 mm will not.
            assertThat(codes(level(
                            boxes,
                            sheet,
                            at(NearbyKind.GAS, 0, 0)
                                    .endsAt(Length.ofMm(5000))
                                    .depth(Length.ofMm(450))
                                    .build())))
                    .isEmpty();
            assertThat(codes(level(
                            boxes,
                            sheet,
                            at(NearbyKind.GAS, 0, 0)
                                    .endsAt(Length.ofMm(5000))
                                    .depth(Length.ofMm(449))
                                    .build())))
                    .containsExactly("service-near");
            GroundPlan drain = level(
                    boxes,
                    sheet,
                    at(NearbyKind.DRAIN, 0, 0).endsAt(Length.ofMm(5000)).build());
            assertThat(codes(drain)).isEmpty();
            assertThat(row(drain, ClearanceMessage.CLEARANCE_OF_PEGS_AND_PINS).verdict())
                    .isEqualTo(Verdict.NOT_SHOWN);
        }

        @Test
        void areOnlyPegsAtTheCornersWhereNoSheetIsPinned() {
            GroundPlan plan = level(
                    List.of(BOX),
                    null,
                    at(NearbyKind.GAS, 0, 0).endsAt(Length.ofMm(5000)).build());
            assertThat(row(plan, ClearanceMessage.CLEARANCE_OF_PEGS_AND_PINS).gotMm())
                    .isCloseTo(500, within(1e-6));
            assertThat(row(plan, ClearanceMessage.CLEARANCE_OF_DUG_GROUND).gotMm())
                    .isCloseTo(400, within(1e-6));
        }

        @Test
        void andHolesKeepHalfAMetreFromAnyService() {
            Box footed = TestBoxes.footed("F1", AT, 500);
            GroundPlan plan = level(
                    List.of(footed),
                    null,
                    at(NearbyKind.WATER, 0, 200)
                            .endsAt(Length.ofMm(5000))
                            .depth(Length.ofMm(900))
                            .build());
            assertThat(row(plan, ClearanceMessage.CLEARANCE_OF_POST_HOLES).gotMm())
                    .isBetween(200.0, 400.0);
            assertThat(codes(plan)).containsExactly("service-near");
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
            Length depth = random.nextBoolean() ? Length.ofMm(random.nextDouble(200, 1100)) : null;
            double along = random.nextDouble(0, 4000);
            double to = along + random.nextDouble(1, 3000);
            double near = random.nextDouble(-800, 400);
            double far = near - random.nextDouble(1, 800);
            GroundPlan before = level(
                    boxes,
                    null,
                    at(kind, along, near).endsAt(Length.ofMm(to)).depth(depth).build());
            GroundPlan after = level(
                    boxes,
                    null,
                    at(kind, along, far).endsAt(Length.ofMm(to)).depth(depth).build());
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
            double before = dug(at(NearbyKind.TREE, along, near)
                            .trunk(Length.ofMm(100))
                            .build())
                    .clearances()
                    .get(0)
                    .gotMm();
            double after = dug(at(NearbyKind.TREE, along, far)
                            .trunk(Length.ofMm(100))
                            .build())
                    .clearances()
                    .get(0)
                    .gotMm();
            assertThat(after).as("from (%f, %f) to %f", along, near, far).isGreaterThan(before);
        }
    }
}
