package borderwright.engine.survey.checks;

import static borderwright.engine.survey.SurveyExamples.border;
import static borderwright.engine.survey.SurveyExamples.names;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.message.Sentences;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.SurveyAnswer;
import borderwright.engine.survey.SurveyExamples;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What cannot be fixed is refused with the measure that would fix it, in these words. */
class SurveyRefusalsTest {

    private static List<Problem> problems(SurveyAnswer answer) {
        assertThat(answer).isInstanceOf(SurveyAnswer.NotFixed.class);
        return ((SurveyAnswer.NotFixed) answer).problems();
    }

    private static void refused(SurveyExamples notes, String code, String where, String sentence) {
        refused(notes.answer(), code, where, sentence);
    }

    private static void refused(SurveyAnswer answer, String code, String where, String sentence) {
        refused(answer, code, where, sentence, English.METRIC);
    }

    private static void refused(SurveyAnswer answer, String code, String where, String sentence, Sentences in) {
        Problem problem = problems(answer).get(0);
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.where()).isEqualTo(where);
        assertThat(problem.sentence(in)).isEqualTo(sentence);
    }

    private static SurveyExamples triangle() {
        return border("A B C").tape("A B", 4000).tape("B C", 3000).tape("A C", 5000);
    }

    @Nested
    class NotFixed {
        @Test
        void nothingMeasured() {
            refused(
                    border("A B C D"),
                    "nothing-measured",
                    "survey.measures",
                    "Nothing was measured. Tape every edge, then across from corner to corner: a border of 4 corners needs at least 5 lengths.");
        }

        @Test
        void fourSidesAndNoDiagonal() {
            refused(
                    border("A B C D")
                            .tape("A B", 4000)
                            .tape("B C", 3000)
                            .tape("C D", 4000)
                            .tape("D A", 3000),
                    "not-fixed",
                    "survey.measures",
                    "Corners C and D can still move: the measures do not fix them. Tape from A to C to fix them.");
        }

        @Test
        void aCornerInNoMeasure() {
            refused(
                    border("A B C D").tape("A B", 4000).tape("B C", 3000).tape("A C", 5000),
                    "not-fixed",
                    "survey.measures",
                    "Corner D can still move: the measures do not fix it."
                            + " Tape from A to D and from C to D to fix it.");
        }

        @Test
        void theMeasureNamedDoesFixIt() {
            assertThat(border("A B C D")
                            .tape("A B", 4000)
                            .tape("B C", 3000)
                            .tape("C D", 4000)
                            .tape("D A", 3000)
                            .tape("A C", 5000)
                            .answer())
                    .isInstanceOf(SurveyAnswer.Adjusted.class);
        }

        @Test
        void anglesAloneGiveNoSize() {
            refused(
                    border("A B C").angle("A B C", 90, 0.5).angle("B C A", 53, 0.5),
                    "not-fixed-in-size",
                    "survey.measures",
                    "Corners B and C are not fixed: angles alone give a shape but no size."
                            + " Tape from A to C to fix them.");
        }

        @Test
        void aHeightThatHangsOnNothing() {
            refused(
                    triangle().rise("A B", 10, 3).rise("C P", 10, 3),
                    "height-not-fixed",
                    "survey.measures",
                    "The heights of C and P are not fixed: no rise connects them with the other levels. Measure the rise from A to C.");
        }

        @Test
        void aTapeAlongTheGroundWithoutLevels() {
            SurveyExamples notes =
                    border("A B C").slope("A B", 4000, 3).tape("B C", 3000).tape("A C", 5000);
            refused(
                    notes,
                    "slope-not-levelled",
                    "survey.measures[0].held",
                    "The tape A-B was held along the ground, but the rise from A to B was not measured."
                            + " Measure the rise from A to B, or tape again with the tape held level.");
            assertThat(problems(notes.answer())).hasSize(1);
        }

        @Test
        void aLevelWithoutAPlace() {
            refused(
                    triangle().level("P", 10, 3),
                    "level-without-place",
                    "survey.measures",
                    "The level of P is known, but not its position. Take two tapes from corners to P, or an offset from a baseline.");
        }
    }

    @Nested
    class TwoShapes {
        @Test
        void aCornerThatMayFoldInOrOut() {
            refused(
                    border("A B C D")
                            .tape("A B", 5000)
                            .tape("B C", 3000)
                            .tape("C D", 2000)
                            .tape("D A", 3000)
                            .tape("A C", 4500),
                    "two-shapes",
                    "survey.measures",
                    "Two shapes fit these measures, with B and D nearer together or farther apart."
                            + " Tape from B to D to decide: 2259 mm in one shape, 4207 mm in the other.");
        }

        @Test
        void theSameInFeetAndInches() {
            SurveyAnswer answer = border("A B C D")
                    .tape("A B", 5000)
                    .tape("B C", 3000)
                    .tape("C D", 2000)
                    .tape("D A", 3000)
                    .tape("A C", 4500)
                    .answer(UnitSystem.IMPERIAL);
            refused(
                    answer,
                    "two-shapes",
                    "survey.measures",
                    "Two shapes fit these measures, with B and D nearer together or farther apart."
                            + " Tape from B to D to decide: 7' 4-15/16\" in one shape, 13' 9-5/8\" in the other.",
                    English.IMPERIAL);
        }

        @Test
        void aStripOfTapesMayBendEitherWay() {
            refused(
                    border("A B C")
                            .strip(500)
                            .tape("A B", 4000)
                            .tape("B C", 3000)
                            .tape("A C", 5000),
                    "two-shapes-by-a-bend",
                    "survey.measures",
                    "Two shapes fit these measures: the line may bend either way at B."
                            + " Take the angle at B, inside the strip, to decide.");
        }
    }

    @Nested
    class WeaklyFixed {
        /**
         * Six points on a conic joined three by three are not stiff, whatever their lengths (Bolker and Roth, "When is a
         * bipartite graph a rigid framework?", Pacific J. Math. 90, 1980): a regular hexagon with its long diagonals.
         */
        @Test
        void aRegularHexagonWithItsThreeLongDiagonalsIsNotStiff() {
            Problem problem = problems(border("A B C D E F")
                            .tape("A B", 2000)
                            .tape("B C", 2000)
                            .tape("C D", 2000)
                            .tape("D E", 2000)
                            .tape("E F", 2000)
                            .tape("F A", 2000)
                            .tape("A D", 4000)
                            .tape("B E", 4000)
                            .tape("C F", 4000)
                            .answer())
                    .get(0);
            assertThat(problem.code()).isEqualTo("weakly-fixed-by-far");
            assertThat(problem.sentence(English.METRIC))
                    .contains(
                            "is weakly fixed: it can move by more than the length of the border without contradicting its measures. Tape from ")
                    .endsWith(" to fix it to within 3 mm.");
        }

        @Test
        void aTriangleThatIsAlmostALineDoesNotHoldItsTip() {
            Problem problem = problems(border("A B C")
                            .tape("A B", 4000)
                            .tape("B C", 3000)
                            .tape("A C", 6999.9, 5)
                            .answer())
                    .get(0);
            assertThat(problem.code()).isEqualTo("weakly-fixed");
            assertThat(problem.what(English.METRIC)).startsWith("Corner B is weakly fixed: it can move by ");
        }

        @Test
        void twoTapesThatCannotMeet() {
            refused(
                    border("A B C").tape("A B", 1000).tape("B C", 3000).tape("A C", 5000),
                    "triangle-does-not-close",
                    "survey.measures",
                    "The tapes A-B and B-C add up to 4000 mm, too short to span A-C, which reads 5000 mm."
                            + " One of the three is wrong: tape them again.");
        }
    }

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
                    "The arc A-B rises 2100 mm over a chord of 4000 mm: more than a half circle. The rise in the middle is at most half the chord, 2000 mm. For a larger arc, name a corner on it to divide it in two.");
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
