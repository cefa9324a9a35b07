package borderwright.engine.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Arc;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.boxes.FarthestPlace;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.layout.run.CurveFacets;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BorderLayoutTest {
    static List<String> notes(Layout layout) {
        return layout.notes().stream().map(English.METRIC::text).toList();
    }

    static final LayoutRules RULES = new LayoutRules(25, 150, 4800);

    static Layout lay(Outline outline, RunSpec... runs) {
        Layout layout = BorderLayout.lay(outline, List.of(runs), RULES, Set.of());
        LayoutVerifier.verify(outline, layout, RULES, List.of(runs), "");
        return layout;
    }

    @Nested
    class StraightRuns {
        @Test
        void aJoinedRunIsOneBoxWithDividersBetweenItsGaps() {
            Layout layout = lay(
                    Borders.strip(9605, 640),
                    RunRequests.along("A B").planters(8).spec());
            assertThat(layout.unmet()).isEmpty();
            FootprintPlan box = layout.boxes().get(0);
            assertThat(layout.boxes()).hasSize(1);
            assertThat(box.name()).isEqualTo("F1-F8");
            assertThat(box.planters()).containsExactly("F1", "F2", "F3", "F4", "F5", "F6", "F7", "F8");
            assertThat(box.outline().corners())
                    .containsExactly(new Point(20, 20), new Point(9585, 20), new Point(9585, 620), new Point(20, 620));
            assertThat(box.dividers().get(0).from().xMm()).isCloseTo(20 + 9565 / 8.0, within(1e-9));
            assertThat(notes(layout)).containsExactly("Along A-B: 8 planters, each 1196 mm from divider to divider.");
        }

        @Test
        void separatePlantersStandApartAndAreNamedFromThePersonsStart() {
            Layout layout = lay(
                    Borders.strip(6000, 640),
                    RunRequests.along("B A").length(1200, 1200).separate(30).spec());
            assertThat(layout.boxes()).hasSize(5);
            assertThat(layout.boxes().get(0).name()).isEqualTo("F1");
            assertThat(layout.boxes().get(0).outline().corner(1).xMm()).isEqualTo(5980);
            assertThat(layout.boxes().get(4).outline().corner(0).xMm()).isCloseTo(20, within(1e-9));
            double gap = layout.boxes().get(0).outline().corner(0).xMm()
                    - layout.boxes().get(1).outline().corner(1).xMm();
            assertThat(gap).isCloseTo(30, within(1e-9));
        }
    }

    @Nested
    class Published {
        /**
         * Practice notes, scenario of a garden bend (common practice, worked): at a corner of 127 degrees the front and
         * the back of a planter 500 mm deep differ by 500 x tan(26.5 deg) = 249 mm per wing.
         */
        @Test
        void frontAndBackOfAMitredWingDifferByTheDepthTimesTheTangentOfTheMitre() {
            Layout layout = lay(
                    Borders.corner(127, EdgeKind.WALL),
                    RunRequests.along("A B C").planters(2).depth(500).spec());
            Ring ring = layout.boxes().get(0).outline();
            assertThat(ring.sideMm(0) - ring.sideMm(4)).isCloseTo(249, within(0.5));
            assertThat(StrictMath.toDegrees(ring.insideAngle(1))).isCloseTo(127, within(1e-9));
            assertThat(StrictMath.toDegrees(ring.insideAngle(4))).isCloseTo(233, within(1e-9));
        }

        /** Practice notes, worked values: on a radius of 4.2 m a chord of 6 m in 6 facets sags 37 mm, in 8 facets 21 mm. */
        @ParameterizedTest
        @CsvSource({"6, 37", "8, 21"})
        void facetsSagAsWorked(int planters, double sagMm) {
            double rise = 4200 - StrictMath.sqrt(4200 * 4200 - 3000 * 3000);
            Outline bay = Borders.of(
                    Ring.rectangle(0, 0, 6000, 4000),
                    List.of(
                            Borders.edge(EdgeKind.OPEN, 0, rise),
                            Borders.edge(EdgeKind.LAWN),
                            Borders.edge(EdgeKind.LAWN),
                            Borders.edge(EdgeKind.LAWN)),
                    GroundHeights.LEVEL);
            CurveFacets.Facets facets = new CurveFacets(
                            0, new Arc(new Point(0, 0), new Point(6000, 0), rise), 0, EdgeKind.OPEN, 600, 0, 1)
                    .forJoinedPlanters(planters, sagMm + 0.5, RULES)
                    .orElseThrow();
            assertThat(facets.bends()).isEqualTo(planters);
            assertThat(facets.sagMm()).isCloseTo(sagMm, within(0.5));
            Layout layout = lay(
                    bay,
                    RunRequests.along("A B")
                            .planters(planters)
                            .sag(sagMm + 0.5)
                            .depth(400)
                            .spec());
            assertThat(layout.boxes().get(0).planters()).hasSize(planters);
        }

        /**
         * Practice notes, scenario of a slope: level readings every 1.5 m along 12 m, four beds of 3 m on courses of
         * 150 mm, low wall 300 mm at each bed's high end, 510 to 600 mm at its low end.
         */
        @Test
        void fourBedsStepDownAFallOf840MmByWholeCourses() {
            double[] drops = {0, 96, 205, 318, 420, 512, 631, 745, 840};
            List<GroundHeights.Spot> spots = new ArrayList<>();
            for (int i = 0; i < drops.length; i++) {
                for (double y : new double[] {0, 320, 640}) {
                    spots.add(new GroundHeights.Spot("g", new Point(1500.0 * i, y), -drops[i], 3));
                }
            }
            Outline slope = Borders.of(
                    Ring.rectangle(0, 0, 12_000, 640),
                    List.of(
                            Borders.edge(EdgeKind.OPEN),
                            Borders.edge(EdgeKind.OPEN),
                            Borders.edge(EdgeKind.LAWN),
                            Borders.edge(EdgeKind.OPEN)),
                    new GroundHeights(spots));
            Layout layout = lay(
                    slope,
                    RunRequests.along("A B").planters(4).height(300).stepped().spec());
            assertThat(layout.boxes()).hasSize(4);
            double[] grounds = {0, -205, -420, -631, -840};
            for (int i = 0; i < 4; i++) {
                FootprintPlan box = layout.boxes().get(i);
                double top = box.bedMm() + box.heightMm();
                assertThat(top - grounds[i]).as("high end of %s", box.name()).isBetween(262.5, 412.5);
                assertThat(top - grounds[i + 1]).as("low end of %s", box.name()).isBetween(480.0, 605.0);
                assertThat(box.bedMm()).isLessThanOrEqualTo(grounds[i + 1] + 1e-6);
                double courses = (box.bedMm() - layout.boxes().get(0).bedMm()) / 150;
                assertThat(courses).isCloseTo(Math.rint(courses), within(1e-9));
            }
            assertThat(notes(layout))
                    .anyMatch(note -> note.matches("From F1 to F2 the bed steps down \\d+ mm, \\d courses?\\."));
        }
    }

    @Nested
    class Closing {
        @Test
        void onlyTheLastBayOfARunBetweenWallsWaits() {
            Layout layout = lay(
                    Borders.strip(9605, 640),
                    RunRequests.along("A B").planters(4).separate(20).spec());
            for (FootprintPlan box : layout.boxes()) {
                boolean last = box.name().equals("F4");
                assertThat(box.sides()).allMatch(side -> side.waits() == (last && side.role() != SidePlan.Role.END));
            }
        }

        @Test
        void aRunWithAFreeEndWaitsForNothing() {
            Layout layout = lay(
                    Borders.corner(90, EdgeKind.WALL),
                    RunRequests.along("A B").planters(3).spec());
            assertThat(layout.boxes().get(0).sides()).noneMatch(SidePlan::waits);
        }
    }

    @Nested
    class SeveralRuns {
        @Test
        void theLaterRunGivesWayAtASharedCornerAndSaysSo() {
            Layout layout = lay(
                    Borders.corner(90, EdgeKind.WALL),
                    RunRequests.along("A B").planters(3).name("long one").spec(),
                    RunRequests.along("B C").planters(3).name("short one").spec());
            assertThat(layout.boxes()).extracting(FootprintPlan::name).containsExactly("LO1-LO3", "SH1-SH3");
            assertThat(layout.boxes().get(1).outline().corner(0).yMm()).isCloseTo(20 + 600 + 20, within(1e-5));
            assertThat(notes(layout))
                    .contains(
                            "Along B-C the run 'short one' gives way to planters placed before: it stands from 640 mm to"
                                    + " 5000 mm, measured from corner B.");
        }

        @Test
        void runsOfLikeNamesGetDifferentLetters() {
            assertThat(RunNames.lettersOf(List.of("fence run", "front", "fence run", "7", "fence"), List.of()))
                    .containsExactly("F", "FR", "FE", "A", "FEN");
        }

        @Test
        void noPlanterHasTheNameOfAPointOfTheSurveyOrOfAPiece() {
            assertThat(RunNames.lettersOf(List.of("parapet", "north", "a", "7"), List.of("N1", "A", "A2", "x1")))
                    .containsExactly("PA", "NO", "E", "F");
            assertThat(RunNames.lettersOf(List.of("north", "apple", "yew"), List.of("N", "A1b", "n x")))
                    .containsExactly("N", "A", "Y");
        }
    }

    @Nested
    class Slopes {
        @Test
        void aLevelRunIsDugInAtItsHighEnd() {
            Layout layout =
                    lay(sloping(65), RunRequests.along("A B").planters(8).spec());
            assertThat(layout.boxes()).hasSize(1);
            assertThat(layout.boxes().get(0).bedMm()).isCloseTo(-65, within(1.0));
            assertThat(layout.boxes().get(0).heightMm()).isEqualTo(450);
            assertThat(layout.unmet()).isEmpty();
            assertThat(notes(layout))
                    .anyMatch(n -> n.matches(
                            "The ground falls 6\\d mm under the run 'fence run': level and dug in at the high end, its wall shows"
                                    + " 450 mm at the low end and 38\\d mm at the high end\\."));
        }

        @Test
        void aLevelRunThatWouldBeHalfBuriedIsNotMet() {
            Layout layout =
                    lay(sloping(600), RunRequests.along("A B").planters(8).spec());
            assertThat(layout.unmet()).extracting(Problem::code).containsExactly("layout-slope");
            assertThat(layout.unmet().get(0).sentence(English.METRIC))
                    .contains("nothing at the high end. Write `slope: stepped`, or give a height of at least");
        }

        private static Outline sloping(double fallMm) {
            List<GroundHeights.Spot> spots = new ArrayList<>();
            for (int i = 0; i <= 8; i++) {
                spots.add(new GroundHeights.Spot("g", new Point(1200.0 * i, 320), -fallMm * i / 8, 3));
            }
            Outline strip = Borders.strip(9600, 640);
            return new Outline(strip.ring(), strip.cornerNames(), strip.edges(), new GroundHeights(spots));
        }
    }

    @Nested
    class Limits {
        @Test
        void aThousandPlantersInOneRunAreLaidOut() {
            Layout layout = lay(
                    Borders.strip(1_200_000, 640),
                    RunRequests.along("A B").planters(1000).separate(20).spec());
            assertThat(layout.boxes()).hasSize(1000);
            assertThat(layout.unmet()).isEmpty();
        }

        @Test
        void aRunAllRoundABorderEndsBeforeItsOwnStart() {
            Layout layout = lay(
                    Borders.strip(6000, 5000),
                    RunRequests.along("A B C D A").planters(2).spec());
            assertThat(layout.boxes()).hasSize(1);
            assertThat(layout.boxes().get(0).planters()).hasSize(11);
        }

        @Test
        void theFarthestPlaceBetweenTwoSidesLiesHalfway() {
            Ring ring = Ring.rectangle(0, 0, 3000, 1200);
            assertThat(FarthestPlace.distanceMm(ring, List.of(ring.side(0)))).isEqualTo(1200);
            assertThat(FarthestPlace.distanceMm(ring, List.of(ring.side(0), ring.side(2))))
                    .isBetween(598.0, 600.0);
        }
    }
}
