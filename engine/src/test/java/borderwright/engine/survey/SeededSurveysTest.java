package borderwright.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.effort.WorkListener;
import borderwright.engine.garden.Measure;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.SurveyedPoint;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.NetworkBuilder;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.shape.ShapeFinder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties over invented borders of five to eight corners; each failure names its seed. */
class SeededSurveysTest {

    static SurveyReport report(SurveySpec notes) {
        return SurveyExamples.adjusted(BorderSurvey.adjust(notes)).report();
    }

    private static Ring ring(SurveySpec notes) {
        return SurveyExamples.adjusted(BorderSurvey.adjust(notes)).outline().ring();
    }

    @Nested
    class Properties {
        @ParameterizedTest
        @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
        void exactMeasuresGiveTheBorderBack(long seed) {
            SeededSurvey survey = new SeededSurvey(seed, 0);
            // lengths are kept in ticks of 1/320 mm: the border can only come back as near as they are
            assertCongruent(ring(survey.notes()).corners(), survey.truth(), 0.01, seed);
        }

        @ParameterizedTest
        @ValueSource(longs = {1, 2, 3, 4, 5, 6})
        void exactObservationsGiveTheBorderBackToAMillionthOfAMillimetre(long seed) {
            List<Point> truth = new SeededSurvey(seed, 0).truth();
            NetworkBuilder builder = new NetworkBuilder();
            int n = truth.size();
            for (int i = 0; i < n; i++) {
                builder.corner(SeededSurvey.name(i));
            }
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    if (j == i + 1 || i == 0 || j - i == 2) {
                        builder.distance(
                                SeededSurvey.name(i),
                                SeededSurvey.name(j),
                                truth.get(i).distanceMm(truth.get(j)),
                                3);
                    }
                }
            }
            List<Integer> corners = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                corners.add(i);
            }
            CornerOrder order = CornerOrder.ring(corners);
            Adjustment found = new ShapeFinder(builder.build(), order, WorkListener.NONE)
                    .find()
                    .get(0)
                    .best();
            assertCongruent(order.places(found.positions()), truth, 1e-6, seed);
        }

        @ParameterizedTest
        @ValueSource(longs = {21, 22, 23, 24, 25, 26})
        void theOrderOfMeasuresDoesNotMatter(long seed) {
            SurveySpec notes = new SeededSurvey(seed, 1).withSlip().notes();
            List<Measure> shuffled = new ArrayList<>(notes.measures());
            Collections.shuffle(shuffled, new Random(seed));
            SurveySpec other = notes.withMeasures(shuffled);
            assertCongruent(ring(other).corners(), ring(notes).corners(), 1e-5, seed);
            assertThat(report(other).suspects().named())
                    .isEqualTo(report(notes).suspects().named());
            assertThat(report(other).suspects().candidates())
                    .hasSameSizeAs(report(notes).suspects().candidates());
        }

        @ParameterizedTest
        @ValueSource(longs = {31, 32, 33, 35, 36, 37})
        void namingTheCornersFromAnotherOneOrClockwiseChangesNothing(long seed) {
            SurveySpec notes = new SeededSurvey(seed, 1).notes();
            List<String> turned = new ArrayList<>(notes.corners().list());
            Collections.rotate(turned, 2);
            SurveySpec fromAnother = notes.withCorners(new Names(turned), RingDirection.ANTICLOCKWISE);
            assertSamePoints(report(notes), report(fromAnother), seed);
            List<String> back = new ArrayList<>(notes.corners().list());
            Collections.reverse(back);
            SurveySpec clockwise = notes.withCorners(new Names(back), RingDirection.CLOCKWISE);
            assertSamePoints(report(notes), report(clockwise), seed);
        }

        @ParameterizedTest
        @ValueSource(longs = {41, 42, 43, 44, 45, 46})
        void theMirrorImageIsTheMirrorImage(long seed) {
            // the same lengths and angles with the corners going the other way
            SurveySpec notes = new SeededSurvey(seed, 1).notes();
            SurveySpec mirrored = notes.withCorners(notes.corners(), RingDirection.CLOCKWISE);
            Ring one = ring(notes);
            Ring other = ring(mirrored);
            assertThat(other.areaMm2()).as("seed " + seed).isCloseTo(one.areaMm2(), within(1.0));
            for (int i = 0; i < one.size(); i++) {
                // B A and on backwards
                assertThat(other.sideMm(-i)).as("seed " + seed).isCloseTo(one.sideMm(i), within(1e-5));
            }
        }

        @ParameterizedTest
        @ValueSource(longs = {51, 52, 53, 54})
        void aBorderTwiceAsLargeIsTwiceAsLarge(long seed) {
            SurveySpec notes = new SeededSurvey(seed, 1).notes();
            SurveySpec doubled = notes.withMeasures(
                    notes.measures().stream().map(m -> scaled(m, 2)).toList());
            SurveySpec plain = notes.withMeasures(
                    notes.measures().stream().map(m -> scaled(m, 1)).toList());
            Ring one = ring(plain);
            Ring two = ring(doubled);
            for (int i = 0; i < one.size(); i++) {
                assertThat(two.sideMm(i)).as("seed " + seed).isCloseTo(2 * one.sideMm(i), within(1e-5));
            }
        }

        private Measure scaled(Measure measure, int factor) {
            if (measure instanceof Measure.TapeLength tape) {
                Length length = new Length(factor * tape.reads().length().ticks());
                return new Measure.TapeLength(
                        tape.tape(), new Measure.Reading(length, 3.0 * factor), tape.held(), tape.with());
            }
            Measure.GaugeAngle gauge = (Measure.GaugeAngle) measure;
            return new Measure.GaugeAngle(gauge.angle(), gauge.reads(), StrictMath.toRadians(0.5), gauge.with());
        }

        @ParameterizedTest
        @ValueSource(longs = {61, 62, 63, 64})
        void redundancyNumbersAddUpToTheRedundancy(long seed) {
            SurveyReport report = report(new SeededSurvey(seed, 1).notes());
            double sum = report.readings().stream()
                    .mapToDouble(SurveyReport.Reading::redundancyNumber)
                    .sum();
            assertThat(sum).as("seed " + seed).isCloseTo(report.redundancy(), within(1e-6));
        }

        @ParameterizedTest
        @ValueSource(longs = {71, 72, 73})
        void theSameNotesGiveTheSameAnswerToTheLastBit(long seed) {
            SurveySpec notes = new SeededSurvey(seed, 1).withSlip().notes();
            assertThat(BorderSurvey.adjust(notes)).isEqualTo(BorderSurvey.adjust(notes));
        }

        /** The sureness that is told is the spread that is found when the same border is measured many times over. */
        @Test
        void theUncertaintyToldIsTheSpreadFound() {
            int times = 300;
            double squares = 0;
            double told = 0;
            Random random = new Random(81);
            double[][] truth = {{0, 0}, {4000, 0}, {4200, 2500}, {-300, 3000}};
            for (int k = 0; k < times; k++) {
                SurveyExamples notes = SurveyExamples.border("A B C D");
                String[] tapes = {"A B", "B C", "C D", "D A", "A C"};
                for (String tape : tapes) {
                    double[] a = truth[tape.charAt(0) - 'A'];
                    double[] b = truth[tape.charAt(2) - 'A'];
                    double length = StrictMath.hypot(b[0] - a[0], b[1] - a[1]);
                    notes.tape(tape, length + 4 * random.nextGaussian(), 4);
                }
                SurveyAnswer.Adjusted adjusted = notes.adjusted();
                double diagonal = adjusted.outline()
                        .ring()
                        .corner(1)
                        .distanceMm(adjusted.outline().ring().corner(3));
                double trueDiagonal = StrictMath.hypot(4300, 3000);
                squares += (diagonal - trueDiagonal) * (diagonal - trueDiagonal);
                FieldBook book = FieldBook.of(notes.notes());
                Adjustment found = new ShapeFinder(book.network(), book.order(), WorkListener.NONE)
                        .find()
                        .get(0)
                        .best();
                told += found.variance(new Observation.Distance(1, 3, 0, 1));
            }
            // 300 draws know a variance to 8 percent: three times that
            assertThat(squares / times).isCloseTo(told / times, within(0.25 * told / times));
        }
    }

    private static void assertCongruent(List<Point> one, List<Point> other, double toleranceMm, long seed) {
        assertThat(one).hasSameSizeAs(other);
        for (int i = 0; i < one.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(one.get(i).distanceMm(one.get(j)))
                        .as("seed " + seed + ", corners " + i + " and " + j)
                        .isCloseTo(other.get(i).distanceMm(other.get(j)), within(toleranceMm));
            }
        }
        assertThat(Ring.signedAreaMm2(one) * Ring.signedAreaMm2(other)).isPositive();
    }

    private static void assertSamePoints(SurveyReport one, SurveyReport other, long seed) {
        assertThat(other.globalTest().orElseThrow().statistic())
                .as("seed " + seed)
                .isCloseTo(one.globalTest().orElseThrow().statistic(), within(1e-6));
        for (SurveyedPoint point : one.points()) {
            SurveyedPoint same = other.points().stream()
                    .filter(p -> p.name().equals(point.name()))
                    .findFirst()
                    .orElseThrow();
            assertThat(same.ellipse().majorMm())
                    .as("seed " + seed + ", " + point.name())
                    .isCloseTo(point.ellipse().majorMm(), within(1e-6));
            assertThat(same.ellipse().minorMm()).isCloseTo(point.ellipse().minorMm(), within(1e-6));
        }
    }
}
