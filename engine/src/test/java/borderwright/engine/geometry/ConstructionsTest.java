package borderwright.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConstructionsTest {
    @Nested
    class Published {
        /** Common practice notes, worked value: a chord of 6 m on a radius of 4.2 m in 6 facets sags 37 mm, in 8 21 mm. */
        @Test
        void facetsOfACurveSagAsWorked() {
            double sweep = 2 * StrictMath.asin(3000 / 4200.0);
            assertThat(Arc.sagMm(4200, sweep / 6)).isCloseTo(37, within(0.5));
            assertThat(Arc.sagMm(4200, sweep / 8)).isCloseTo(21, within(0.5));
        }

        /** Weisstein, MathWorld, "Sagitta": s = R - sqrt(R^2 - a^2), a half the chord; here 5 - sqrt(25 - 9) = 1. */
        @Test
        void radiusFollowsFromChordAndRise() {
            assertThat(new Arc(new Point(0, 0), new Point(6, 0), 1).radiusMm()).isCloseTo(5, within(1e-12));
        }
    }

    @Nested
    class Lines {
        @Test
        void linesMeetWhereTheyCross() {
            Line x = Line.between(new Point(0, 5), new Point(10, 5));
            Line y = Line.between(new Point(3, -1), new Point(3, 1));
            assertThat(x.meet(y)).contains(new Point(3, 5));
            assertThat(x.meet(x.offset(2))).isEmpty();
        }

        @Test
        void leftIsPositive() {
            Line x = Line.between(new Point(0, 0), new Point(10, 0));
            assertThat(x.offsetMm(new Point(4, 7))).isEqualTo(7);
            assertThat(x.offset(7).offsetMm(new Point(4, 7))).isZero();
            assertThat(x.stationMm(new Point(4, 7))).isEqualTo(4);
            assertThat(x.turnTo(Line.between(new Point(0, 0), new Point(0, 1))))
                    .isCloseTo(StrictMath.PI / 2, within(1e-15));
        }

        @Test
        void crossingSegmentsHaveNoDistanceAndOthersTheirLeast() {
            Segment flat = new Segment(new Point(0, 0), new Point(10, 0));
            assertThat(flat.distanceMm(new Segment(new Point(5, -5), new Point(5, 5))))
                    .isZero();
            assertThat(flat.distanceMm(new Segment(new Point(13, 4), new Point(20, 30))))
                    .isEqualTo(5);
            assertThat(flat.distanceMm(new Point(-3, 4))).isEqualTo(5);
        }

        @Test
        void aDirectionOfAnotherLengthIsRefused() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Line(new Point(0, 0), new Point(2, 0)))
                    .withMessage("a line's direction has length 1, got 2.0");
        }
    }

    @Nested
    class Arcs {
        @Test
        void anArcRisesToTheRightOfItsChord() {
            Arc arc = new Arc(new Point(0, 0), new Point(2000, 0), 300);
            assertThat(arc.at(0.5).yMm()).isCloseTo(-300, within(1e-9));
            assertThat(arc.at(0).distanceMm(arc.from())).isCloseTo(0, within(1e-9));
            assertThat(arc.at(1).distanceMm(arc.to())).isCloseTo(0, within(1e-9));
            assertThat(arc.distanceMm(new Point(1000, -400))).isCloseTo(100, within(1e-9));
            assertThat(arc.distanceMm(new Point(-30, 40))).isCloseTo(50, within(1e-9));
        }

        @Test
        void anArcMayRiseToTheLeftAndPastAHalfCircle() {
            Arc arc = new Arc(new Point(0, 0), new Point(2000, 0), -1800);
            assertThat(arc.at(0.5).yMm()).isCloseTo(1800, within(1e-9));
            assertThat(arc.sweep()).isLessThan(-StrictMath.PI);
            assertThat(arc.at(1).distanceMm(arc.to())).isCloseTo(0, within(1e-9));
        }
    }

    @Nested
    class Properties {
        @ParameterizedTest
        @ValueSource(longs = {11, 12, 13})
        void insideAgreesWithJts(long seed) {
            Random random = new Random(seed);
            Ring ell = new Ring(List.of(
                    new Point(0, 0),
                    new Point(90, 0),
                    new Point(90, 40),
                    new Point(35, 40),
                    new Point(35, 80),
                    new Point(0, 80)));
            for (int round = 0; round < 300; round++) {
                Point point = new Point(random.nextDouble() * 120 - 15, random.nextDouble() * 120 - 15);
                boolean expected = ell.toJts()
                        .contains(ell.toJts()
                                .getFactory()
                                .createPoint(new org.locationtech.jts.geom.Coordinate(point.xMm(), point.yMm())));
                assertThat(ell.contains(point, 0)).as("seed %d %s", seed, point).isEqualTo(expected);
            }
        }
    }
}
