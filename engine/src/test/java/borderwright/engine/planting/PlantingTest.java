package borderwright.engine.planting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.vocabulary.Crop;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantingTest {
    private static final Point HERE = new Point(0, 0);
    private static final LocalDate EQUINOX = LocalDate.of(2026, 3, 20);
    private static final LocalDate SOLSTICE = LocalDate.of(2026, 6, 21);

    @Nested
    class Roots {
        @ParameterizedTest
        @CsvSource({
            "LETTUCE, 300, 500, 0.30",
            "TOMATO, 700, 1500, 0.40",
            "CARROTS, 500, 1000, 0.35",
            "STRAWBERRIES, 200, 300, 0.20",
            "POTATO, 400, 600, 0.35",
            "GREEN_BEANS, 500, 700, 0.45",
            "ASPARAGUS, 1200, 1800, 0.45",
            "SWEET_CORN, 800, 1200, 0.50",
            "CUCUMBER, 700, 1200, 0.50",
            "PEAS, 600, 1000, 0.35"
        })
        @DisplayName("rooting depth and depletion: Allen et al. 1998, FAO Irrigation and Drainage Paper 56, table 22")
        void depths(Crop crop, double low, double high, double p) {
            CropTable table = CropTable.of(crop);
            assertThat(table.zrLowMm()).isCloseTo(low, within(1e-9));
            assertThat(table.zrHighMm()).isCloseTo(high, within(1e-9));
            assertThat(table.p()).isEqualTo(p);
        }

        @Test
        void everyCropHasARowThatMakesSense() {
            for (Crop crop : Crop.values()) {
                CropTable table = CropTable.of(crop);
                assertThat(table.zrLowMm()).as("%s", crop).isLessThan(table.zrHighMm());
                assertThat(table.p()).as("%s", crop).isBetween(0.1, 0.8);
                assertThat(table.leastMm()).as("%s", crop).isLessThanOrEqualTo(table.zrLowMm());
            }
        }

        @Test
        void aDepthIsRoomyEnoughOrTooShallow() {
            assertThat(CropFit.of(Crop.TOMATO, 440).verdict()).isEqualTo(CropFit.Verdict.TOO_SHALLOW);
            assertThat(CropFit.of(Crop.TOMATO, 450).verdict()).isEqualTo(CropFit.Verdict.ENOUGH);
            assertThat(CropFit.of(Crop.TOMATO, 700).verdict()).isEqualTo(CropFit.Verdict.ROOMY);
        }
    }

    @Nested
    class Water {
        @ParameterizedTest
        @CsvSource({
            "0.09, 400, 36",
            "0.09, 800, 72",
            "0.09, 1200, 108",
            "0.17, 400, 68",
            "0.17, 800, 136",
            "0.12, 1200, 144"
        })
        @DisplayName(
                "total available water of three soils for onion, tomato and maize (FAO-56 example 36, from memory)")
        void total(double fcLessWp, double depth, double mm) {
            assertThat(Watering.totalMm(fcLessWp, depth)).isCloseTo(mm, within(0.5));
        }

        @Test
        void aShallowBoxLastsOnlyAsLongAsItsDepthHolds() {
            Watering lettuce = CropFit.of(Crop.LETTUCE, 200).watering();
            assertThat(lettuce.readyMm()).isCloseTo(0.3 * 0.15 * 200, within(1e-12));
            assertThat(lettuce.days()).isCloseTo(1.8, within(1e-12));
            assertThat(CropFit.of(Crop.LETTUCE, 900).watering().depthMm()).isCloseTo(300, within(1e-9));
        }
    }

    @Nested
    class Sun {
        /** North along y. */
        private SunHours at(double latitude, SunHours.Wall... walls) {
            return new SunHours(latitude, StrictMath.PI / 2, List.of(walls));
        }

        private double hours(SunHours sun, LocalDate date, Point place, double levelMm) {
            return sun.hours(sun.day(date), place, levelMm);
        }

        @Test
        @DisplayName("open ground: day length (2/15) acos(-tan lat tan dec), less the low sun that is not counted")
        void dayLength() {
            // 12 h at the equinox and 16.4 h at the solstice at 51.5 N; the last 3 degrees take about 20 min at each
            // end.
            assertThat(hours(at(51.5), EQUINOX, HERE, 0)).isBetween(11.0, 11.7);
            assertThat(hours(at(51.5), SOLSTICE, HERE, 0)).isBetween(15.3, 16.0);
        }

        @Test
        @DisplayName("noon shadow at 51.5 N on the equinox is 1.2572 of the height: exact")
        void aWallToTheSouthShadesAsFarAsItsShadow() {
            SunHours.Wall wall = new SunHours.Wall(new Segment(new Point(-1e6, 0), new Point(1e6, 0)), 1000);
            SunHours sun = at(51.5, wall);
            double near = hours(sun, EQUINOX, new Point(0, 1100), 0);
            double far = hours(sun, EQUINOX, new Point(0, 1400), 0);
            // At the equinox the tip of a shadow draws a straight line east to west: all or nothing.
            assertThat(near).isLessThan(1.5);
            assertThat(far).isGreaterThan(10);
        }

        @Test
        void aWallToTheEastTakesTheMorning() {
            SunHours.Wall wall = new SunHours.Wall(new Segment(new Point(500, -1e6), new Point(500, 1e6)), 5000);
            double open = hours(at(51.5), EQUINOX, HERE, 0);
            double shaded = hours(at(51.5, wall), EQUINOX, HERE, 0);
            assertThat(shaded).isBetween(open / 2 - 0.5, open / 2 + 0.7);
        }

        @Test
        void aRaisedBedSeesOverALowWall() {
            SunHours.Wall wall = new SunHours.Wall(new Segment(new Point(-1e6, -300), new Point(1e6, -300)), 500);
            assertThat(hours(at(51.5, wall), EQUINOX, HERE, 450))
                    .isGreaterThan(hours(at(51.5, wall), EQUINOX, HERE, 0) + 3);
        }

        @Test
        void theSouthernHemisphereHasItsSunInTheNorth() {
            SunHours.Wall wall = new SunHours.Wall(new Segment(new Point(-1e6, -300), new Point(1e6, -300)), 3000);
            assertThat(hours(at(-40, wall), EQUINOX, HERE, 0)).isGreaterThan(10);
            assertThat(hours(at(40, wall), EQUINOX, HERE, 0)).isLessThan(2);
        }
    }
}
