package borderwright.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArcTest {
    /**
     * The chord and rise formula of any table of circular segments (chord 24, rise 4, radius 20), and circular segments of
     * tables for radius 1, 5 and 10 at 60, 45 and 90 degrees.
     */
    @ParameterizedTest
    @CsvSource({
        "24, 4, 20, 73.739795, 25.740044, 1e-6",
        "1.000000, 0.133975, 1, 60, 1.047198, 5e-7",
        "3.826834, 0.380602, 5, 45, 3.926991, 5e-6",
        "14.142136, 2.928932, 10, 90, 15.707963, 5e-6",
    })
    void segmentTables(double chord, double rise, double radius, double degrees, double length, double tolerance) {
        Arc arc = new Arc(new Point(0, 0), new Point(chord, 0), rise);
        // chord and rise are printed to six decimals, and the radius answers to the rise many times over
        assertThat(arc.radiusMm()).isCloseTo(radius, within(30 * tolerance));
        assertThat(StrictMath.toDegrees(arc.sweep())).isCloseTo(degrees, within(0.001));
        assertThat(arc.lengthMm()).isCloseTo(length, within(3 * tolerance));
    }
}
