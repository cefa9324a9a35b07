package borderwright.engine.survey.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ArcByRiseTest {
    @Nested
    class Published {
        /** The chord and rise formula of any table of circular segments: chord 24, rise 4, radius 20. */
        @Test
        void chordTwentyFourAndRiseFourMakeRadiusTwenty() {
            ArcByRise arc = new ArcByRise(24, 4);
            assertThat(arc.radiusMm()).isCloseTo(20, within(1e-12));
            assertThat(arc.lengthMm()).isCloseTo(25.740044, within(0.0000005));
        }

        /** Circular segments of tables for radius 1, 5 and 10 at 60, 45 and 90 degrees. */
        @Test
        void segmentTables() {
            assertSegment(1, 60, 1.000000, 0.133975, 1.047198, 0.0905861, 0.0000005);
            assertSegment(5, 45, 3.826834, 0.380602, 3.926991, 0.978642, 0.000005);
            assertSegment(10, 90, 14.142136, 2.928932, 15.707963, 28.539816, 0.000005);
        }

        private void assertSegment(
                double radius,
                double degrees,
                double chord,
                double rise,
                double length,
                double area,
                double tolerance) {
            ArcByRise arc = new ArcByRise(chord, rise);
            // chord and rise are printed to six decimals, and the radius answers to the rise many times over
            assertThat(arc.radiusMm()).isCloseTo(radius, within(30 * tolerance));
            assertThat(StrictMath.toDegrees(arc.angleRad())).isCloseTo(degrees, within(0.001));
            assertThat(arc.lengthMm()).isCloseTo(length, within(3 * tolerance));
            assertThat(arc.segmentMm2()).isCloseTo(area, within(10 * tolerance));
        }
    }

    @Nested
    class Limits {
        @Test
        void aHalfCircleIsTheMost() {
            assertThat(new ArcByRise(2000, 1000).radiusMm()).isEqualTo(1000);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new ArcByRise(2000, 1001))
                    .withMessage("an arc has a rise of 0 to half its chord, got 1001.0 mm over 2000.0 mm");
        }

        @Test
        void theRadiusOfAFlatArcIsUnsure() {
            ArcByRise arc = new ArcByRise(6000, 50);
            double stepped = (new ArcByRise(6000, 51).radiusMm() - new ArcByRise(6000, 49).radiusMm()) / 2;
            assertThat(arc.sdRadiusMm(0, 1)).isCloseTo(Math.abs(stepped), within(1.0));
        }
    }
}
