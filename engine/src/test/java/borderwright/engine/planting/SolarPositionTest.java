package borderwright.engine.planting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SolarPositionTest {
    @Nested
    class Published {
        @Test
        @DisplayName("17 Oct 2003 12:30:30 UTC-7, 39.742476 N 105.1786 W: elevation 39.872046, azimuth 194.340241,"
                + " declination -9.316179 (Reda and Andreas, NREL/TP-560-34302, appendix A.5)")
        void nrelExample() {
            SolarPosition sun = SolarPosition.at(2452930.312847, 39.742476, -105.1786);
            // Low-accuracy formulas: a hundredth of a degree.
            assertThat(StrictMath.toDegrees(sun.elevation())).isCloseTo(39.872046, within(0.01));
            assertThat(StrictMath.toDegrees(sun.azimuth())).isCloseTo(194.340241, within(0.01));
            assertThat(StrictMath.toDegrees(sun.declination())).isCloseTo(-9.316179, within(0.01));
        }

        @ParameterizedTest(name = "{0}")
        @CsvSource({
            "'Reykjavik, 21 June 2021 12:00 UTC', 2459387.0, 64.1466, -21.9426, 149.338, 46.7023",
            "'Berlin, 21 June 2021 12:00 UTC', 2459387.0, 52.52, 13.405, 203.723, 59.2857",
            "'Berlin, 21 December 2021 09:30 UTC', 2459569.895833333, 52.52, 13.405, 157.983, 11.2933"
        })
        @DisplayName("points of the SPA quoted by a public test suite of a solar library")
        void spa(String where, double julianDay, double latitude, double longitude, double azimuth, double elevation) {
            SolarPosition sun = SolarPosition.at(julianDay, latitude, longitude);
            assertThat(StrictMath.toDegrees(sun.azimuth())).as(where).isCloseTo(azimuth, within(0.01));
            assertThat(StrictMath.toDegrees(sun.elevation())).as(where).isCloseTo(elevation, within(0.01));
        }

        @ParameterizedTest
        @CsvSource({
            "51.5, 23.44, 61.94",
            "51.5, 0, 38.50",
            "51.5, -23.44, 15.06",
            "40, 23.44, 73.44",
            "40, -23.44, 26.56"
        })
        @DisplayName("noon elevation = 90 - |latitude - declination|: exact")
        void noon(double latitude, double declination, double elevation) {
            SolarPosition sun = SolarPosition.of(StrictMath.toRadians(declination), 0, StrictMath.toRadians(latitude));
            assertThat(StrictMath.toDegrees(sun.elevation())).isCloseTo(elevation, within(1e-9));
            assertThat(StrictMath.toDegrees(sun.azimuth())).isCloseTo(180, within(1e-9));
        }
    }
}
