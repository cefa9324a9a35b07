package borderwright.engine.survey;

import static borderwright.engine.survey.SurveyExamples.border;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.ArcTaken;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import borderwright.engine.survey.checks.SurveyReport.Closing;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BorderSurveyTest {

    private static SurveyExamples rectangle() {
        return border("A B C D")
                .tape("A B", 4000, 3)
                .tape("B C", 3000, 3)
                .tape("C D", 4000, 3)
                .tape("D A", 3000, 3)
                .tape("A C", 5000, 3)
                .tape("B D", 5000, 3);
    }

    @Nested
    class Outlines {
        @Test
        void aTapedRectangleIsARectangle() {
            Outline outline = rectangle().adjusted().outline();
            assertThat(outline.cornerNames()).containsExactly("A", "B", "C", "D");
            double[][] expected = {{0, 0}, {4000, 0}, {4000, 3000}, {0, 3000}};
            for (int i = 0; i < 4; i++) {
                assertThat(outline.ring().corner(i).xMm()).isCloseTo(expected[i][0], within(1e-6));
                assertThat(outline.ring().corner(i).yMm()).isCloseTo(expected[i][1], within(1e-6));
            }
        }

        @Test
        void cornersNamedClockwiseAreTurnedAndKeepTheirFirstEdgeFirst() {
            SurveyAnswer.Adjusted fence =
                    SurveyExamples.fence().edge("A B", EdgeKind.FENCE).adjusted();
            Outline outline = fence.outline();
            assertThat(outline.cornerNames()).containsExactly("B", "A", "D", "C");
            assertThat(outline.edges().get(0).kind()).isEqualTo(EdgeKind.FENCE);
            assertThat(outline.edges().get(0).leanMm()).isEqualTo(4);
            assertThat(outline.edges().get(0).clearanceMm()).isEqualTo(24);
            assertThat(outline.ring().corner(2).yMm()).isCloseTo(594, within(1e-6));
            assertThat(outline.ring().corner(3).yMm()).isCloseTo(618, within(1e-6));
            assertThat(outline.ground().heightMm(outline.ring().corner(0))).isEqualTo(-517);
        }

        @Test
        void aStripGetsItsMitredFront() {
            Outline outline = SurveyExamples.bend().adjusted().outline();
            assertThat(outline.cornerNames()).containsExactly("A", "B", "C", "C'", "B'", "A'");
            Ring ring = outline.ring();
            assertThat(StrictMath.toDegrees(ring.insideAngle(1))).isCloseTo(127.368, within(0.001));
            // mitred: the front corner lies on the line that halves the angle, depth / sin(half) away
            double half = ring.insideAngle(1) / 2;
            assertThat(ring.corner(1).distanceMm(ring.corner(4))).isCloseTo(540 / StrictMath.sin(half), within(1e-6));
            assertThat(ring.corner(5).yMm()).isCloseTo(540, within(1e-6));
        }

        /** Two tapes of one length, 3 mm each: each checks half of the other, so 4.13 x 3 / sqrt(1/2) shows, and half of it moves the end. */
        @Test
        void aSlipInTheLengthOfAStraightStripMovesItsEnd() {
            SurveyAnswer.Adjusted strip = border("A B")
                    .strip(500)
                    .tape("A B", 4000, 3)
                    .tape("A B", 4001, 3)
                    .adjusted();
            double slipMm = 4.1321 * 3 / StrictMath.sqrt(0.5);
            assertThat(strip.report().readings()).hasSize(2).allSatisfy(reading -> {
                assertThat(reading.unnoticed().slip().orElseThrow()).isCloseTo(slipMm, within(0.01));
                assertThat(reading.unnoticed().movesMm().orElseThrow()).isCloseTo(slipMm / 2, within(0.01));
            });
        }

        /** Radius 3000 over a chord of 4000: rise 763.932; at a quarter of the chord it stands off 592.359, and it is 4378.366 long. */
        @Test
        void aCurveComesFromOffsetsAndATapeTogether() {
            Outline outline = rectangle()
                    .add(new GivenArc(
                            Names.of("A", "B"),
                            Length.ofMm(592),
                            null,
                            Length.ofMm(1000),
                            ArcBulge.OUTWARD,
                            null,
                            null))
                    .add(new GivenArc(
                            Names.of("A", "B"),
                            Length.ofMm(4378),
                            ArcTaken.ALONG_THE_WALL,
                            null,
                            ArcBulge.OUTWARD,
                            null,
                            null))
                    .adjusted()
                    .outline();
            assertThat(outline.edges().get(0).riseMm()).isCloseTo(763.932, within(1.0));
        }

        @Test
        void aStripNamedClockwiseHasItsFrontOnTheRight() {
            Outline outline = border("A B C")
                    .strip(500)
                    .clockwise()
                    .tape("A B", 4000, 3)
                    .tape("B C", 3000, 3)
                    .angle("A B C", 90, 0.5)
                    .adjusted()
                    .outline();
            assertThat(outline.cornerNames()).containsExactly("C", "B", "A", "A'", "B'", "C'");
            assertThat(StrictMath.toDegrees(outline.ring().insideAngle(1))).isCloseTo(90, within(1e-6));
            assertThat(outline.ring().areaMm2()).isCloseTo(500 * (4000 + 3000 - 500), within(1e-3));
        }

        @Test
        void aRiseMakesACurvedEdge() {
            Outline outline = rectangle()
                    .arc("A B", 310, ArcBulge.OUTWARD)
                    .arc("D C", 200, ArcBulge.INWARD)
                    .adjusted()
                    .outline();
            assertThat(outline.edges().get(0).riseMm()).isCloseTo(310, within(1e-9));
            assertThat(outline.edges().get(2).riseMm()).isCloseTo(-200, within(1e-9));
        }

        @Test
        void aTapeAlongTheGroundIsReducedByTheLevels() {
            Outline outline = border("A B C")
                    .slope("A B", 5000, 2)
                    .tape("B C", 4000, 2)
                    .tape("A C", 4000, 2)
                    .level("A", 0, 3)
                    .rise("A B", 1400, 3)
                    .adjusted()
                    .outline();
            assertThat(outline.ring().sideMm(0)).isCloseTo(4800, within(1e-6));
        }
    }

    @Nested
    class ClosingErrors {
        @Test
        void onePullAgainstEightLengthsIsSeventeenOff() {
            List<Closing> closings = SurveyExamples.fence().adjusted().report().closings();
            assertThat(closings).hasSize(1);
            assertThat(English.METRIC.text(closings.get(0).what())).isEqualTo("A-B in one pull against 8 lengths");
            assertThat(closings.get(0).errorMm()).isCloseTo(17, within(1e-9));
            assertThat(closings.get(0).sdMm()).isCloseTo(Math.sqrt(9 + 8 * 4), within(1e-9));
        }

        @Test
        void aGaugeAgainstThreeTapesIsSaidInMillimetres() {
            List<Closing> closings = SurveyExamples.wedge().adjusted().report().closings();
            assertThat(English.METRIC.text(closings.get(0).what())).isEqualTo("A-C by the angle at B against the tape");
            assertThat(closings.get(0).errorMm()).isCloseTo(66.3, within(0.05));
        }

        @Test
        void aBackSightClosesTheLevels() {
            SurveyExamples slope =
                    border("A B C").tape("A B", 12000, 5).tape("B C", 9000, 5).tape("C A", 15000, 5);
            Closing closing = slope.level("A", 0, 3)
                    .level("B", -840, 3)
                    .rise("B A", 847, 3)
                    .adjusted()
                    .report()
                    .closings()
                    .get(0);
            assertThat(English.METRIC.text(closing.what())).isEqualTo("rise B-A against the levels between");
            assertThat(closing.errorMm()).isCloseTo(7, within(1e-9));
        }
    }
}
