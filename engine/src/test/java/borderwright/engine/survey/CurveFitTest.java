package borderwright.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CurveFitTest {
    private static double radius(double chord, double rise) {
        return (chord * chord / 4 + rise * rise) / (2 * rise);
    }

    /** Offsets from the long chord: B. C. Punmia, Surveying, vol. 2, curves, exercise with chord 80 and rise 4; answers from memory. */
    @ParameterizedTest
    @CsvSource({"0, 4.00", "10, 3.75", "20, 3.01", "30, 1.76", "40, 0.00"})
    void offsetsOfAPublishedCurve(double fromMiddle, double offset) {
        assertThat(CurveFit.offsetMm(80, 4, 40 + fromMiddle)).isCloseTo(offset, within(0.005));
        assertThat(radius(80, 4)).isEqualTo(202);
    }

    /** Any one of the printed offsets leads back to the rise; to what the print rounds off. */
    @ParameterizedTest
    @CsvSource({"0, 4.00", "10, 3.75", "20, 3.01", "30, 1.76"})
    void theRiseFollowsFromAPublishedOffset(double fromMiddle, double offset) {
        CurveFit fit = new CurveFit(80);
        fit.offset(40 + fromMiddle, offset, 0.005);
        assertThat(fit.fit().riseMm()).isCloseTo(4, within(0.015));
    }

    /** Radius 200 over 45 degrees: chord 153.07 as printed in a worked example of curve setting, rise and arc by the same formulas. */
    @Test
    void aTapeAlongAPublishedCurveGivesItsRise() {
        double chord = 2 * 200 * StrictMath.sin(StrictMath.toRadians(22.5));
        assertThat(chord).isCloseTo(153.07, within(0.005));
        CurveFit fit = new CurveFit(chord);
        fit.tape(200 * StrictMath.toRadians(45), 0.01);
        assertThat(fit.fit().riseMm()).isCloseTo(15.2241, within(1e-4));
    }

    /** A third of a circle of radius 3 is as long as pi. */
    @Test
    void aTapeRoundAThirdOfACircle() {
        assertThat(CurveFit.lengthMm(3000, 401.924)).isCloseTo(3141.593, within(0.001));
    }

    /** A rise read in the middle is as sure as its reading; a tape round a flat curve says more of it than its own error. */
    @Test
    void theRiseIsAsSureAsWhatItWasTakenFrom() {
        CurveFit middle = new CurveFit(2000);
        middle.offset(1000, 171.573, 5);
        assertThat(middle.fit().sdMm()).isCloseTo(5, within(1e-6));
        CurveFit two = new CurveFit(2000);
        two.offset(1000, 171.573, 5);
        two.offset(1000, 171.573, 5);
        assertThat(two.fit().sdMm()).isCloseTo(5 / StrictMath.sqrt(2), within(1e-6));
    }

    /** Chords of 1 to 6 m, rises up to a half circle: exact readings lead back to the rise, and one off by 60 mm is named. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void theWrongReadingOfACurveIsNamed(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            double chord = 1000 + 5000 * random.nextDouble();
            double rise = chord * (0.06 + 0.4 * random.nextDouble());
            int slip = random.nextInt(-1, 3);
            CurveFit fit = new CurveFit(chord);
            for (int k = 0; k < 3; k++) {
                double along = chord * (0.3 + 0.2 * k);
                double read = CurveFit.offsetMm(chord, rise, along) + 2 * random.nextGaussian() * 0.5;
                fit.offset(along, read + (k == slip ? 60 : 0), 2);
            }
            fit.tape(CurveFit.lengthMm(chord, rise), 3);
            CurveFit.Rise found = fit.fit();
            if (slip < 0) {
                assertThat(found.wrong()).isEmpty();
                assertThat(found.riseMm()).isCloseTo(rise, within(3.5));
            } else {
                assertThat(found.wrong()).hasValue(slip);
            }
        }
    }
}
