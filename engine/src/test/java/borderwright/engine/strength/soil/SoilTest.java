package borderwright.engine.strength.soil;

import static java.lang.StrictMath.toRadians;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.strength.worked.Working;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoilTest {
    @Nested
    class Published {
        @ParameterizedTest
        @CsvSource({"28, 0.3610", "32, 0.3073", "30, 0.3333", "35, 0.2710"})
        void rankineActive(double phi, double printed) {
            // Das, Principles of Foundation Engineering, 8th ed., table of Rankine's coefficient.
            assertThat(EarthCoefficient.active(toRadians(phi))).isCloseTo(printed, within(5e-5));
            assertThat(EarthCoefficient.passive(toRadians(phi))).isCloseTo(1 / printed, within(1e-3));
        }

        @Test
        void drySandOverSubmergedSand() {
            // Das, Principles of Foundation Engineering, 8th ed. (2016), example 14.1, p. 719: 9.77 and 18.55 kN/m2.
            double ka = EarthCoefficient.active(toRadians(32));
            PressureProfile sand = new PressureProfile(ka, 15.90, 19.33, 2, 2, 0, 9.81);
            assertThat(sand.total(2)).isCloseTo(9.77, within(5e-3));
            assertThat(sand.total(5)).isCloseTo(18.55, within(5e-3));
        }

        @Test
        void sumsOfVenkatramaiah() {
            // Venkatramaiah, Geotechnical Engineering, example 13.5, pp. 517-518: base soil pressure 59.9, surcharge
            // 23.8,
            // H 6.3: P = 338.6 kN at 2.56 m.
            PressureProfile fill = PressureProfile.drained(1, 59.9 / 6.3, 23.8);
            Thrust thrust = fill.thrust(6.3);
            assertThat(thrust.knPerM()).isCloseTo(338.6, within(0.05));
            assertThat(thrust.aboveBaseM()).isCloseTo(2.56, within(6e-3));
        }

        @ParameterizedTest
        @CsvSource({"0.9, 0.9, 5.9205", "0.9, 4.5, 16.2612", "0.9, 9, 18.8964", "9, 9, 59.2053"})
        void narrowFill(double width, double depth, double printed) {
            // Al-Hassan et al., narrow backfill lateral earth pressure, fig. 2, p. 3: K0 0.5, delta 20, 1.6 t/m3, H 9
            // m.
            // The figure's values are kN/m2 for a width over height of 0.1 and 1.
            Janssen fill = new Janssen(width, 1.6 * 9.81, 0.5, toRadians(20));
            assertThat(fill.pressure(depth)).isCloseTo(printed, within(5e-5));
        }

        @ParameterizedTest
        @CsvSource({"GRAVEL, 143.6, 0.35", "SAND, 95.8, 0.25", "CLAY, 71.8, 0"})
        void presumptiveBearing(FoundationSoil kind, double kpa, double sliding) {
            // IBC 2012 table 1806.2: 3000, 2000 and 1500 psf.
            assertThat(kind.bearingKnPerM2()).isCloseTo(kpa, within(0.05));
            assertThat(kind.sliding()).isEqualTo(sliding);
        }
    }

    @Nested
    class Properties {
        @Test
        void waterOnBothSidesPushesNothingAndOnOneSideAll() {
            PressureProfile both = new PressureProfile(0.5, 18, 20, 0, 0, 0, 9.81);
            PressureProfile one = new PressureProfile(0.5, 18, 20, 0, Double.POSITIVE_INFINITY, 0, 9.81);
            assertThat(one.thrust(1).knPerM() - both.thrust(1).knPerM()).isCloseTo(9.81 / 2, within(1e-12));
        }

        @Test
        void wideFillIsNotRelieved() {
            assertThat(new Janssen(1000, 18, 0.5, toRadians(20)).relief(0.45)).isCloseTo(1, within(1e-3));
            assertThat(new Janssen(0.5, 18, 0.5, toRadians(20)).relief(0.45)).isLessThan(1);
        }

        @Test
        void thrustIsTheSumOfManyThinSlices() {
            PressureProfile p = new PressureProfile(0.5, 16, 19, 0.2, 0.35, 3, 9.81);
            double sum = 0;
            double moment = 0;
            int n = 20000;
            for (int i = 0; i < n; i++) {
                double z = (i + 0.5) / n * 0.6;
                sum += p.total(z) * 0.6 / n;
                moment += p.total(z) * (0.6 - z) * 0.6 / n;
            }
            assertThat(p.thrust(0.6).knPerM()).isCloseTo(sum, within(1e-6));
            assertThat(p.thrust(0.6).momentKnm()).isCloseTo(moment, within(1e-6));
        }
    }

    @Nested
    class Strip {
        private final RetainingStrip strip = new RetainingStrip(6, 0.3, 0.6, new Thrust(1, 0.2), 0.35, 100);

        @Test
        void factorsByHand() {
            // mu W / P = 2.1; W a / (P h) = 9; e = 0.3 - (0.3 - 0.2/6) = 0.0333: q = 10 (1 + 6 x 0.0333 / 0.6) = 13.33.
            assertThat(strip.slidingUse(Working.SILENT)).isCloseTo(1.5 / 2.1, within(1e-12));
            assertThat(strip.tippingUse(Working.SILENT)).isCloseTo(1.5 / 9, within(1e-12));
            assertThat(strip.bearingUse(Working.SILENT)).isCloseTo(0.13333, within(1e-5));
        }

        @Test
        void weightOutsideTheBaseHasNoPressureThatHolds() {
            RetainingStrip tips = new RetainingStrip(1, 0.3, 0.6, new Thrust(2, 0.2), 0.35, 100);
            assertThat(tips.pressureKnPerM2()).isInfinite();
        }
    }

    @Nested
    class Refusals {
        @Test
        void fillBetweenWallsOfNoWidth() {
            assertThatThrownBy(() -> new Janssen(0, 18, 0.5, 0.3))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("width, coefficient and wall friction are above 0, got 0.0, 0.5, 0.3");
        }
    }
}
