package borderwright.engine.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.assembly.order.Diagonal;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.settingout.PegList.Offset;
import borderwright.engine.settingout.PegList.Peg;
import borderwright.engine.settingout.PegList.Tapes;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import borderwright.engine.survey.checks.NextMeasureMessage;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.SurveyedPoint;
import borderwright.engine.survey.network.ErrorEllipse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PegListTest {
    static final double REACH_MM = 10_000;

    private static final OutlineEdge FENCE = new OutlineEdge(EdgeKind.FENCE, 20, 0, 0);
    static final Outline OUTLINE = new Outline(
            Ring.rectangle(0, 0, 9605, 3000),
            List.of("A", "B", "C", "D"),
            Collections.nCopies(4, FENCE),
            GroundHeights.LEVEL);

    static SurveyReport survey(SurveyedPoint... points) {
        return new SurveyReport(
                List.of(points),
                List.of(),
                List.of(),
                0,
                Optional.empty(),
                SurveyReport.Suspects.NONE,
                new SurveyReport.NextMeasure(
                        NextMeasureMessage.NEXT_SECOND_TAPE_OF_ANY.of(), NextMeasureMessage.NEXT_SHOWS_A_SLIP.of()));
    }

    static SurveyedPoint point(String name, double x, double y) {
        return new SurveyedPoint(name, new Point(x, y), 1, 1, new ErrorEllipse(1, 1, 0));
    }

    static FootprintPlan box(Ring outline) {
        SidePlan side = SidePlan.free(SidePlan.Role.FRONT, EdgeKind.OPEN, 0);
        return FootprintPlan.builder()
                .name("F1")
                .run("run")
                .outline(outline)
                .sides(Collections.nCopies(outline.size(), side))
                .planters(List.of("F1"))
                .bedMm(0)
                .heightMm(450)
                .build();
    }

    /** The right triangle of sides 3, 4 and 5 (Euclid, Elements I.48: the converse of the theorem of Pythagoras). */
    @Nested
    class Published {
        @Test
        void tapesOfThreeAndFourMetresCrossSquareOverABaseOfFive() {
            SurveyReport survey = survey(point("A", 0, 0), point("B", 5000, 0));
            // 3 m from A and 4 m from B: 1.8 m along the base, 2.4 m off it.
            Ring ring = new Ring(List.of(new Point(1800, 2400), new Point(2800, 2400), new Point(2300, 3400)));

            Tapes tapes = PegList.of(survey, OUTLINE, List.of(box(ring)), REACH_MM)
                    .pegs()
                    .get(0)
                    .tapes()
                    .orElseThrow();

            assertThat(tapes.first()).isEqualTo("A");
            assertThat(tapes.second()).isEqualTo("B");
            assertThat(tapes.firstMm()).isCloseTo(3000, within(1e-9));
            assertThat(tapes.secondMm()).isCloseTo(4000, within(1e-9));
            assertThat(StrictMath.toDegrees(tapes.crossingRad())).isCloseTo(90, within(1e-9));
            assertThat(tapes.side()).isEqualTo(TapeSide.LEFT);
        }

        @Test
        void aRectangleOfThreeByFourHasTwoDiagonalsOfFive() {
            SurveyReport survey = survey(point("A", 0, 0), point("B", 9000, 0));

            List<PegList.Check> checks = PegList.of(
                            survey, OUTLINE, List.of(box(Ring.rectangle(1000, 1000, 4000, 5000))), REACH_MM)
                    .checks();

            assertThat(checks)
                    .containsExactly(new PegList.Check("F1", 1, 3, 5000), new PegList.Check("F1", 2, 4, 5000));
        }
    }

    @Nested
    class Limits {
        /** Nobody can hook a tape at a corner that stands only in the plan. */
        @Test
        void theFrontCornersOfAStripAreNoKnownPoints() {
            Outline strip = new Outline(
                    Ring.rectangle(0, 0, 9605, 3000),
                    List.of("A", "B", "B'", "A'"),
                    Collections.nCopies(4, FENCE),
                    GroundHeights.LEVEL);
            SurveyReport survey =
                    survey(point("A", 0, 0), point("B", 9605, 0), point("B'", 9605, 3000), point("A'", 0, 3000));

            List<Peg> pegs = PegList.of(survey, strip, List.of(box(Ring.rectangle(600, 1800, 4000, 2900))), REACH_MM)
                    .pegs();

            assertThat(pegs).hasSize(4).allSatisfy(peg -> {
                assertThat(peg.tapes().stream().flatMap(t -> Stream.of(t.first(), t.second())))
                        .doesNotContain("A'", "B'");
                assertThat(peg.offset().stream().flatMap(o -> Stream.of(o.from(), o.to())))
                        .doesNotContain("A'", "B'");
            });
        }

        @Test
        void aPegCloseToTheOnlyLineIsGivenAlongItAndSquareOffIt() {
            SurveyReport survey = survey(point("A", 0, 0), point("B", 9605, 0));

            Peg peg = PegList.of(survey, OUTLINE, List.of(box(Ring.rectangle(1200, 20, 2400, 3000))), REACH_MM)
                    .pegs()
                    .get(0);

            assertThat(peg.tapes()).isEmpty();
            assertThat(peg.offset()).contains(new Offset("A", "B", 1200, 20, TapeSide.LEFT));
        }

        @Test
        void nearAFenceATapeLaidAlongItIsPreferredToTapesThatHardlyCross() {
            SurveyReport survey =
                    survey(point("A", 0, 0), point("B", 9605, 0), point("C", 9605, 3000), point("S", 3000, 0));

            Peg peg = PegList.of(survey, OUTLINE, List.of(box(Ring.rectangle(2600, 20, 3600, 600))), 2000)
                    .pegs()
                    .get(0);

            assertThat(peg.tapes()).isEmpty();
            assertThat(peg.offset()).contains(new Offset("A", "B", 2600, 20, TapeSide.LEFT));
        }

        @Test
        void aPegOnAKnownPointIsNoughtAlongAndNoughtOff() {
            SurveyReport survey = survey(point("A", 0, 0), point("B", 9605, 0));

            Peg peg = PegList.of(survey, OUTLINE, List.of(box(Ring.rectangle(0, 0, 1200, 600))), REACH_MM)
                    .pegs()
                    .get(0);

            assertThat(peg.offset().map(Offset::alongMm)).contains(0.0);
            assertThat(peg.offset().map(Offset::squareMm)).contains(0.0);
        }

        @Test
        void aPairBeyondTheReachIsTakenOnlyWhenThereIsNoOther() {
            SurveyedPoint near = point("A", 0, 0);
            SurveyedPoint far = point("B", 14_000, -2000);
            SurveyedPoint other = point("C", 1000, 4000);
            Ring ring = Ring.rectangle(3000, 1000, 4000, 2000);

            Tapes only = PegList.of(survey(near, far), OUTLINE, List.of(box(ring)), REACH_MM)
                    .pegs()
                    .get(3)
                    .tapes()
                    .orElseThrow();
            Tapes choice = PegList.of(survey(near, far, other), OUTLINE, List.of(box(ring)), REACH_MM)
                    .pegs()
                    .get(3)
                    .tapes()
                    .orElseThrow();

            assertThat(only.second()).isEqualTo("B");
            assertThat(choice.second()).isEqualTo("C");
        }

        @Test
        void aBoxRoundACornerIsCheckedAcrossEachCornerAsWhenItIsBuilt() {
            SurveyReport survey = survey(point("A", 0, 0), point("B", 9000, 0));
            Ring ring = new Ring(List.of(
                    new Point(0, 500),
                    new Point(2000, 500),
                    new Point(2000, 2500),
                    new Point(1500, 2500),
                    new Point(1500, 1000),
                    new Point(0, 1000)));

            List<PegList.Check> checks =
                    PegList.of(survey, OUTLINE, List.of(box(ring)), REACH_MM).checks();
            assertThat(checks).extracting(PegList.Check::first).containsExactly(1, 2, 3, 4, 5, 6);
            assertThat(checks).extracting(PegList.Check::second).containsExactly(3, 4, 5, 6, 1, 2);
            assertThat(checks)
                    .extracting(PegList.Check::distanceMm)
                    .containsExactlyElementsOf(
                            Diagonal.of(ring).stream().map(Diagonal::lengthMm).toList());
        }
    }

    @Test
    void oneKnownPointIsRefused() {
        assertThatThrownBy(() -> PegList.of(survey(point("A", 0, 0)), OUTLINE, List.of(), REACH_MM))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("pegs need at least 2 known points, got 1");
    }

    @Nested
    class Properties {
        /** The place is found again from what is printed, by the slow way: walking the two circles' crossing. */
        @ParameterizedTest(name = "seed {0}")
        @ValueSource(longs = {1, 2, 3, 4, 5})
        void whatIsPrintedLeadsBackToThePeg(long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            List<SurveyedPoint> known = new ArrayList<>();
            Map<String, Point> byName = new LinkedHashMap<>();
            for (int i = 0; i < 5; i++) {
                SurveyedPoint p = point("P" + i, random.nextDouble(12_000), random.nextDouble(9000));
                known.add(p);
                byName.put(p.name(), p.at());
            }
            double x = random.nextDouble(8000);
            double y = random.nextDouble(6000);
            PegList list = PegList.of(
                    survey(known.toArray(new SurveyedPoint[0])),
                    OUTLINE,
                    List.of(box(Ring.rectangle(x, y, x + 1200, y + 600))),
                    REACH_MM);

            for (Peg peg : list.pegs()) {
                Point found = peg.tapes()
                        .map(t -> crossing(byName, t))
                        .orElseGet(() -> off(byName, peg.offset().orElseThrow()));
                assertThat(found.distanceMm(peg.at())).isLessThan(1e-5);
            }
        }

        private static Point crossing(Map<String, Point> known, Tapes tapes) {
            Point a = known.get(tapes.first());
            Point b = known.get(tapes.second());
            // Turn the first tape from the base towards the stated side until the second fits: bisection.
            double base = a.distanceMm(b);
            Point along = b.minus(a).times(1 / base);
            Point side =
                    tapes.side() == TapeSide.LEFT ? along.left() : along.left().times(-1);
            double low = 0;
            double high = StrictMath.PI;
            Point p = a;
            for (int i = 0; i < 200; i++) {
                double turn = (low + high) / 2;
                p = a.plus(along.times(tapes.firstMm() * StrictMath.cos(turn)))
                        .plus(side.times(tapes.firstMm() * StrictMath.sin(turn)));
                if (p.distanceMm(b) < tapes.secondMm()) {
                    low = turn;
                } else {
                    high = turn;
                }
            }
            return p;
        }

        private static Point off(Map<String, Point> known, Offset offset) {
            Point from = known.get(offset.from());
            Point along = known.get(offset.to()).minus(from).unit();
            Point side =
                    offset.side() == TapeSide.LEFT ? along.left() : along.left().times(-1);
            return from.plus(along.times(offset.alongMm())).plus(side.times(offset.squareMm()));
        }
    }
}
