package borderwright.engine.survey.checks;

import static borderwright.engine.survey.SurveyExamples.border;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.vocabulary.LeftOrRight;
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

    static List<Problem> problems(SurveyAnswer answer) {
        assertThat(answer).isInstanceOf(SurveyAnswer.NotFixed.class);
        return ((SurveyAnswer.NotFixed) answer).problems();
    }

    static void refused(SurveyExamples notes, String code, String where, String sentence) {
        refused(notes.answer(), code, where, sentence);
    }

    static void refused(SurveyAnswer answer, String code, String where, String sentence) {
        refused(answer, code, where, sentence, English.METRIC);
    }

    static void refused(SurveyAnswer answer, String code, String where, String sentence, Sentences in) {
        Problem problem = problems(answer).get(0);
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.where()).isEqualTo(where);
        assertThat(problem.sentence(in)).isEqualTo(sentence);
    }

    static SurveyExamples triangle() {
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

    /** One tape too long by a point: nothing else reaches corner C, so it is not the corner that is at fault. */
    @Test
    void oneMisreadTapeAgainstTheOthersIsNamed() {
        SurveyExamples notes = border("A B C D")
                .clockwise()
                .tape("A B", 1500)
                .tape("B C", 90_000)
                .tape("D A", 900)
                .tape("A C", 1750)
                .tape("B D", 1750)
                .angle("D A B", 90, 0.5);
        refused(
                notes,
                "triangle-does-not-close",
                "survey.measures",
                "The tapes A-B and A-C add up to 3250 mm, too short to span B-C, which reads 90.000 m. One of the three is"
                        + " wrong: tape them again.");
    }

    /** Eight lengths round an arc of 60 mm rise over 9.6 m, and the straight line between its ends. */
    @Test
    void aChainAlongACurveIsToldThatAChainMustBeStraight() {
        SurveyExamples notes = border("A B C D")
                .clockwise()
                .tape("A B", 9605, 3)
                .chain("A S1 S2 S3 S4 S5 S6 S7 B", 2, 1207, 1207, 1207, 1207, 1207, 1207, 1207, 1207)
                .offset("D", "A B", 0, 594, LeftOrRight.RIGHT, 5)
                .offset("C", "B A", 0, 618, LeftOrRight.LEFT, 5);
        List<String> slips = notes.adjusted().report().suspects().candidates().stream()
                .flatMap(c -> c.slip().stream())
                .map(English.METRIC::text)
                .toList();
        assertThat(slips).anyMatch(slip -> slip.contains("a chain must be straight"));
    }
}
