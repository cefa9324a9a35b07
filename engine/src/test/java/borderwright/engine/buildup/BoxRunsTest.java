package borderwright.engine.buildup;

import static borderwright.engine.buildup.BoxBuilderTest.BATTEN;
import static borderwright.engine.buildup.BoxBuilderTest.LARCH;
import static borderwright.engine.buildup.BoxBuilderTest.build;
import static borderwright.engine.buildup.BoxBuilderTest.of;
import static borderwright.engine.buildup.BoxBuilderTest.piece;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What stands between the corners of a box: joints, uprights, dividers, ties and floors. */
class BoxRunsTest {
    @Nested
    class Runs {
        private final FootprintPlan run = Footprints.run(9575, 560, 450, 1197, 2394, 3591, 4788, 5985, 7182, 8379);
        private final Box box = BoxBuilder.build(
                run, Footprints.rules(LARCH, BATTEN, null), Footprints.means(45, Map.of(LARCH, 4780.0)));

        @Test
        void longSidesAreJoinedOnUprightsAndStaggered() {
            List<Double> first = joints(1);
            List<Double> second = joints(2);
            assertThat(first).isNotEmpty().doesNotContainAnyElementsOf(second);
            assertThat(joints(3)).isEqualTo(first);
            for (double joint : first) {
                double left = joint - 1;
                double right = joint + 1;
                assertThat(of(box, Role.BRACE)).anyMatch(brace -> bears(brace, left));
                assertThat(of(box, Role.BRACE)).anyMatch(brace -> bears(brace, right));
            }
            assertThat(of(box, Role.WALL)).allMatch(piece -> piece.length().mm() <= 4780);
        }

        private List<Double> joints(int course) {
            return of(box, Role.WALL).stream()
                    .filter(piece -> piece.course() == course && piece.side() == 0)
                    .map(piece -> piece.place().plan().corner(0).xMm())
                    .filter(x -> x > 100)
                    .sorted()
                    .toList();
        }

        /** Within the reach of the upright, or at a divider on the board's own side of it: half its 25 mm, 2 mm of play, 1 mm off the joint. */
        private boolean bears(Piece brace, double x) {
            List<Point> corners = brace.place().plan().corners();
            double least = corners.stream().mapToDouble(Point::xMm).min().orElseThrow();
            double most = corners.stream().mapToDouble(Point::xMm).max().orElseThrow();
            double near = corners.stream().mapToDouble(Point::yMm).min().orElseThrow();
            return StrictMath.abs(near - 25) < 0.01 && least - 14 < x && x < most + 14;
        }

        @Test
        void eachPlanterHasItsOwnGround() {
            assertThat(box.inside()).hasSize(8);
            assertThat(box.inside().get(7).areaMm2()).isCloseTo((1197 - 25 - 12.5) * 510, within(1e-3));
            assertThat(box.inside().get(3).areaMm2()).isCloseTo((1197 - 25) * 510.0, within(1e-3));
        }

        @Test
        void bracesStandNoFurtherApartThanTheSpacing() {
            List<Double> middles = new ArrayList<>();
            for (Piece piece : box.pieces()) {
                List<Point> corners = piece.place().plan().corners();
                double near = corners.stream().mapToDouble(Point::yMm).min().orElseThrow();
                if ((piece.role() == Role.BRACE || piece.role() == Role.POST) && StrictMath.abs(near - 25) < 0.01) {
                    middles.add(
                            corners.stream().mapToDouble(Point::xMm).average().orElseThrow());
                }
            }
            middles.sort(null);
            for (int i = 0; i + 1 < middles.size(); i++) {
                assertThat(middles.get(i + 1) - middles.get(i)).isLessThan(605);
            }
        }

        @Test
        void dividersButtBetweenFrontAndBack() {
            assertThat(of(box, Role.DIVIDER)).hasSize(21).allSatisfy(board -> {
                assertThat(board.length()).isEqualTo(Length.ofMm(510));
                assertThat(board.left().isSquare()).isTrue();
                assertThat(English.METRIC.text(board.faceOut())).startsWith("marked face towards F");
            });
        }

        @Test
        void labelsAreUniqueAndSpeakOfPlanterCourseAndSide() {
            assertThat(box.pieces())
                    .extracting(Piece::label)
                    .doesNotHaveDuplicates()
                    .contains("F1-1c", "F8-1a", "F3-divider2");
        }

        @Test
        void screwsAreNamedAsGoodsAreSold() {
            // At a joint over a divider its second upright is screwed through both, 47 + 25 + 47 mm.
            assertThat(box.fixings()).extracting(Box.Fixing::item).containsOnly("screw 5 x 70", "screw 6 x 100");
            assertThat(box.fixings().get(0).pilotMm()).isEqualTo(2.5);
            assertThat(box.fixings().get(0).clearanceMm()).isEqualTo(5.5);
            assertThat(box.fixings().get(0).countersinkMm()).isEqualTo(10);
        }

        /** As the layout draws boxes: the back first, dividers from front to back, the run's first planter first. */
        @Test
        void withOneDividerTheFirstPlanterIsAtTheStartOfTheBack() {
            FootprintPlan plan = FootprintPlan.builder()
                    .name("F1-F2")
                    .run("run")
                    .outline(Ring.rectangle(0, 0, 2000, 600))
                    .sides(sides(SidePlan.Role.BACK, SidePlan.Role.END, SidePlan.Role.FRONT, SidePlan.Role.END))
                    .dividers(List.of(new DividerLine(2, new Point(700, 600), 0, new Point(700, 0))))
                    .planters(List.of("F1", "F2"))
                    .bedMm(100)
                    .heightMm(300)
                    .build();
            Box two = build(plan, null);
            assertThat(two.inside().get(0).areaMm2()).isCloseTo((700 - 25 - 12.5) * 550, within(1e-3));
            assertThat(two.courses().get(0).bottomMm()).isEqualTo(100);
            assertThat(piece(two, "F1-1d").place().bottomMm()).isEqualTo(100);
        }

        private static List<SidePlan> sides(SidePlan.Role... roles) {
            List<SidePlan> sides = new ArrayList<>();
            for (SidePlan.Role role : roles) {
                boolean waits = role == SidePlan.Role.END;
                sides.add(new SidePlan(role, EdgeKind.OPEN, waits, 0));
            }
            return sides;
        }

        @Test
        void boardsOfASideThatWaitsWait() {
            FootprintPlan plan = FootprintPlan.builder()
                    .name("F1")
                    .run("run")
                    .outline(Ring.rectangle(0, 0, 1200, 600))
                    .sides(sides(SidePlan.Role.BACK, SidePlan.Role.END, SidePlan.Role.FRONT, SidePlan.Role.END))
                    .planters(List.of("F1"))
                    .bedMm(0)
                    .heightMm(300)
                    .build();
            Box one = build(plan, null);
            assertThat(of(one, Role.WALL))
                    .allSatisfy(piece -> assertThat(piece.waits()).isEqualTo(piece.side() == 1 || piece.side() == 3));
            assertThat(of(one, Role.WALL))
                    .allSatisfy(piece -> assertThat(piece.touchesGround()).isEqualTo(piece.course() == 1));
        }
    }

    @Nested
    class CrossTies {
        /** 600 long and 2400 deep: the ends are the sides that bow, so ties run between them, 600 less two boards. */
        @Test
        void aBoxDeeperThanItIsLongHasItsTiesFromEndToEnd() {
            Box box = build(Footprints.run(600, 2400, 450), null);

            assertThat(of(box, Role.TIE)).isNotEmpty().allSatisfy(tie -> {
                assertThat(tie.length()).isEqualTo(Length.ofMm(550));
                assertThat(English.METRIC.text(tie.faceOut())).isEqualTo("any face; left end to side b");
            });
        }

        @Test
        void aTieReachesBothInnerFacesAndIsScrewedSideways() {
            Box box = build(Footprints.run(2400, 800, 450), null);
            Piece tie = of(box, Role.TIE).get(0);
            assertThat(of(box, Role.TIE)).hasSize(1);
            assertThat(tie.length()).isEqualTo(Length.ofMm(750));
            assertThat(tie.left().isSquare()).isTrue();
            assertThat(tie.place().topMm()).isEqualTo(375);
            assertThat(box.fixings())
                    .filteredOn(fixing -> fixing.hold() == Box.Hold.TIE_TO_BRACE)
                    .singleElement()
                    .satisfies(fixing -> assertThat(fixing.count()).isEqualTo(6));
            assertThat(box.notes().stream().map(English.METRIC::text))
                    .contains("Fix the ties before any soil goes in: their tops lie 75 mm below the rim.");
        }

        @Test
        void aTieBetweenFacesThatAreNotParallelIsBevelled() {
            Ring wedge =
                    new Ring(List.of(new Point(0, 0), new Point(2400, 0), new Point(2400, 900), new Point(0, 500)));
            Box box = build(Footprints.plan(wedge, 450), null);
            Piece tie = of(box, Role.TIE).get(0);
            assertThat(tie.left().isSquare()).isTrue();
            assertThat(tie.right().tiltDeg())
                    .isCloseTo(StrictMath.toDegrees(StrictMath.atan(400 / 2400.0)), within(1e-9));
            assertThat(PutTogether.faults(box, Footprints.SECTIONS, 25, true)).isEmpty();
        }

        @Test
        void aWallTooLowForATieSaysSo() {
            Box box = build(Footprints.run(2400, 800, 150), null);
            assertThat(of(box, Role.TIE)).isEmpty();
            assertThat(box.notes().stream().map(English.METRIC::text))
                    .contains("No ties in F1: its wall is too low for a tie of larch 25 x 150 between floor and rim.");
        }

        @Test
        void theSchemeSetsTheSpacings() {
            BuildSpec rules = Footprints.rules(LARCH, BATTEN, null);
            BuildMeans means = Footprints.means(45, Map.of());
            FootprintPlan plan = Footprints.run(2400, 800, 450);
            Box wide = BoxBuilder.build(plan, rules, means, new BracingScheme(2500, 0, 75, List.of()));
            Box close = BoxBuilder.build(plan, rules, means, new BracingScheme(400, 0, 75, List.of(1, 2, 3)));
            assertThat(of(wide, Role.BRACE)).isEmpty();
            assertThat(of(close, Role.BRACE)).hasSize(5).allMatch(brace -> brace.side() == 0);
        }
    }

    @Nested
    class Floors {
        private final Box box =
                build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), List.of(), 450, 200, false), null);

        @Test
        void slatsLieOnBearersOnLegsOnTheBed() {
            assertThat(of(box, Role.SLAT)).isNotEmpty().allSatisfy(slat -> {
                assertThat(slat.place().topMm()).isEqualTo(200);
                assertThat(slat.place().bottomMm()).isEqualTo(175);
            });
            assertThat(of(box, Role.BEARER)).hasSizeGreaterThan(1).allSatisfy(bearer -> {
                assertThat(bearer.place().topMm()).isEqualTo(175);
            });
            assertThat(of(box, Role.LEG))
                    .hasSize(3 * of(box, Role.BEARER).size())
                    .allSatisfy(leg -> {
                        assertThat(leg.place().bottomMm()).isEqualTo(0);
                        assertThat(leg.length()).isEqualTo(Length.ofMm(125));
                        assertThat(leg.touchesGround()).isTrue();
                    });
            assertThat(box.soilDepthMm()).isEqualTo(250);
        }

        @Test
        void slatsAreNotchedRoundTheUprights() {
            assertThat(of(box, Role.SLAT))
                    .anySatisfy(slat -> assertThat(slat.notches())
                            .isNotEmpty()
                            .allSatisfy(notch -> assertThat(notch.edge().code())
                                    .isIn(CutMessage.LOWER_EDGE, CutMessage.UPPER_EDGE)));
        }

        @Test
        void aPlatformTooLowToBuildSaysWhatWouldDo() {
            Box low = build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), List.of(), 450, 40, false), null);
            assertThat(of(low, Role.SLAT)).isEmpty();
            assertThat(low.soilDepthMm()).isEqualTo(450);
            assertThat(low.unmet())
                    .extracting(p -> p.sentence(English.METRIC))
                    .containsExactly(
                            "A false floor 40 mm above the bed cannot be built in F1. Ask for at least 72 mm (slats on flat bearers),"
                                    + " and at most 400 mm (50 mm below the rim).");
        }
    }
}
