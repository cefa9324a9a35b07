package borderwright.engine.survey.checks;

import static borderwright.engine.survey.SurveyExamples.border;
import static borderwright.engine.survey.SurveyExamples.names;
import static borderwright.engine.survey.checks.SurveyRefusalsTest.problems;
import static borderwright.engine.survey.checks.SurveyRefusalsTest.refused;
import static borderwright.engine.survey.checks.SurveyRefusalsTest.triangle;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.ArcTaken;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Notes that are refused for their form or their order. */
class SurveyFormTest {
    @Nested
    class GoingRoundTheWrongWay {
        @Test
        void cornersNamedInTheWrongOrder() {
            refused(
                    border("A B C D")
                            .tape("A C", 4000)
                            .tape("C B", 3000)
                            .tape("B D", 4000)
                            .tape("D A", 3000)
                            .tape("A B", 5000)
                            .tape("C D", 5000),
                    "edges-cross",
                    "survey.corners",
                    "As the corners are named, edge A-B crosses edge C-D."
                            + " Name the corners in the order in which you meet them going round the border.");
        }

        @Test
        void offsetsTakenToTheOtherSide() {
            refused(
                    border("A B C D")
                            .clockwise()
                            .tape("A B", 4000)
                            .offset("D", "A B", 0, 1000, LeftOrRight.LEFT, 3)
                            .offset("C", "B A", 0, 1000, LeftOrRight.RIGHT, 3),
                    "goes-round-the-other-way",
                    "survey.going round",
                    "The measures make the corners go round the other way."
                            + " Perhaps the border lies on the other side, or an offset was taken to the other side.");
        }
    }

    @Nested
    class FaultsOfForm {
        @Test
        void tooFewCorners() {
            refused(
                    border("A B"),
                    "too-few-corners",
                    "survey.corners",
                    "A border has at least 3 corners, and 2 are named. Name at least 3 corners in order round the border,"
                            + " such as A B C D; for a strip along a wall give its width as `strip width`.");
            refused(
                    border("A").strip(500),
                    "too-few-corners-of-a-strip",
                    "survey.corners",
                    "A strip has at least 2 corners, and 1 is named."
                            + " Name the two ends of the line along the wall, and the bends between them.");
        }

        @Test
        void aStripTooDeepForItsBend() {
            refused(
                    border("A B C")
                            .strip(5000)
                            .tape("A B", 4000)
                            .tape("B C", 3000)
                            .angle("A B C", 60, 0.5),
                    "strip-too-deep",
                    "survey.strip width",
                    "A strip 5000 mm wide does not fit inside the bends of its line: its front crosses itself."
                            + " Give a smaller width, or go round the other way if the strip lies on the other side.");
        }

        @Test
        void anArcHigherThanAHalfCircle() {
            refused(
                    triangle().arc("A B", 2100, ArcBulge.OUTWARD),
                    "arc-too-high",
                    "survey.measures[3].reads",
                    "The offset of the curve A-B reads 2100 mm over a chord of 4000 mm: more than on a half circle, where it is 2000 mm. Check the reading. For more than a half circle, name a corner on the curve to divide it in two.");
        }

        @Test
        void aCurveWhoseReadingsDoNotFitOneCircle() {
            refused(
                    triangle()
                            .arc("A B", 764, ArcBulge.OUTWARD)
                            .add(new GivenArc(
                                    names("A B"),
                                    Length.ofMm(4478),
                                    ArcTaken.ALONG_THE_WALL,
                                    null,
                                    ArcBulge.OUTWARD,
                                    null,
                                    null)),
                    "curve-disagrees",
                    "survey.measures[3].reads",
                    "The offset of the curve A-B reads 764 mm, where one circle through all readings of this curve makes it 784 mm."
                            + " Measure the curve again, or name a corner where it is not one circle.");
        }

        @Test
        void aTapeRoundACurveNoLongerThanItsChord() {
            refused(
                    triangle()
                            .add(new GivenArc(
                                    names("A B"),
                                    Length.ofMm(3990),
                                    ArcTaken.ALONG_THE_WALL,
                                    null,
                                    ArcBulge.OUTWARD,
                                    null,
                                    null)),
                    "curve-shorter-than-chord",
                    "survey.measures[3].reads",
                    "The tape along the curve A-B reads 3990 mm, no more than the straight line of 4000 mm between its"
                            + " corners. Lay the tape against the wall all the way, and read it again.");
        }

        @Test
        void allFaultsOfFormComeTogether() {
            List<Problem> problems = problems(triangle()
                    .edge("A D", EdgeKind.WALL)
                    .tape("A A", 3)
                    .chain("A P B", 2, 1000)
                    .angle("A P B", 200, 0.5)
                    .lean("B D", 3, 4)
                    .offset("A", "A B", 3, 4, LeftOrRight.LEFT, 3)
                    .add(new GivenMeasure.GivenTapeLength(
                            names("A B"), Length.ofMm(4000), null, null, Instrument.GAUGE))
                    .add(new GivenMeasure.GivenGaugeAngle(names("A B C"), Angle.ofDegrees(40), null, Instrument.TAPE))
                    .answer());
            assertThat(problems)
                    .extracting(p -> p.where() + " " + p.sentence(English.METRIC))
                    .containsExactly(
                            "survey.edges[0].edge `A D` is not an edge of the border. The edges are A B, B C, C A.",
                            "survey.measures[3].tape A tape length runs between two different points, and `A A` is not that."
                                    + " Write it like `A B`.",
                            "survey.measures[4].lengths The chain A-B has 3 points and 1 lengths."
                                    + " 3 points have 2 lengths between them.",
                            "survey.measures[5].reads An angle of 200 deg is one inside the border, but not all its points are"
                                    + " corners. Give the smaller angle between the two directions, 160 deg.",
                            "survey.measures[6].lean `B D` is not an edge of the border. The edges are A B, B C, C A.",
                            "survey.measures[7].offset Point A is an end of the baseline that it is measured from."
                                    + " Measure it from a baseline between two other points.",
                            "survey.measures[8].with A gauge does not take a length."
                                    + " Give the instrument as `with`, or how far it may be off as `give or take`.",
                            "survey.measures[9].with A tape does not take an angle."
                                    + " Give the instrument as `with`, or how far it may be off as `give or take`.");
        }

        @Test
        void aCornerNamedTwice() {
            refused(
                    border("A B C A"),
                    "corner-named-twice",
                    "survey.corners",
                    "Corner A is named twice. Name each corner once, in order round the border.");
        }

        @Test
        void twoCornersOnOneSpot() {
            refused(
                    border("A B C D")
                            .tape("A B", 4000)
                            .tape("B C", 3000)
                            .tape("A C", 5000)
                            .offset("D", "A B", 0, 0, LeftOrRight.LEFT, 3),
                    "corners-coincide",
                    "survey.corners",
                    "Corners D and A lie at the same place."
                            + " Leave one of them out, or correct the measures between them.");
        }
    }
}
