package borderwright.engine.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.draft.CornerCut;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompoundAngleTest {
    /** Half the last printed digit, and rounding of the double. */
    private static final double PRINTED = 0.005 + 1e-9;

    @Nested
    class Published {
        /**
         * "Compound angle setting chart", owner's manual of a compound mitre saw, model 315.21212, page 24: pitch of the
         * side from lying flat, then mitre and bevel for 4 to 10 sides. One of the 77 pairs is left out: at pitch 25
         * with 7 sides the mitre is printed 23.56, but the formula that gives every other entry gives 23.58.
         */
        private static final List<String> CHART = List.of(
                "0  45.00/0.00  36.00/0.00  30.00/0.00  25.71/0.00  22.50/0.00  20.00/0.00  18.00/0.00",
                "5  44.89/3.53  35.90/2.94  29.91/2.50  25.63/2.17  22.42/1.91  19.93/1.71  17.94/1.54",
                "10 44.56/7.05  35.58/5.86  29.62/4.98  25.37/4.32  22.19/3.81  19.72/3.40  17.74/3.08",
                "15 44.01/10.55 35.06/8.75  29.15/7.44  24.95/6.45  21.81/5.68  19.37/5.08  17.42/4.59",
                "20 43.22/14.00 34.32/11.60 28.48/9.85  24.35/8.53  21.27/7.52  18.88/6.72  16.98/6.07",
                "25 42.19/17.39 33.36/14.38 27.62/12.20 23.56/10.57 20.58/9.31  18.26/8.31  16.41/7.50",
                "30 40.89/20.70 32.18/17.09 26.57/14.48 22.64/12.53 19.73/11.03 17.50/9.85  15.72/8.89",
                "35 39.32/23.93 30.76/19.70 25.31/16.67 21.53/14.41 18.74/12.68 16.60/11.31 14.90/10.21",
                "40 37.45/27.03 29.10/22.20 23.86/18.75 20.25/16.19 17.60/14.24 15.58/12.70 13.98/11.46",
                "45 35.26/30.00 27.19/24.56 22.21/20.70 18.80/17.87 16.32/15.70 14.43/14.00 12.94/12.62",
                "50 32.73/32.80 25.03/26.76 20.36/22.52 17.20/19.41 14.91/17.05 13.17/15.19 11.80/13.69");

        @Test
        void theSawManualsChartOfSeventySixPairs() {
            int pairs = 0;
            for (String row : CHART) {
                String[] cells = row.split(" +");
                double pitch = Double.parseDouble(cells[0]);
                for (int sides = 4; sides <= 10; sides++) {
                    if (pitch == 25 && sides == 7) {
                        continue;
                    }
                    String[] pair = cells[sides - 3].split("/");
                    CompoundAngle angle = CompoundAngle.ofRing(sides, pitch);
                    assertThat(angle.mitre().degrees())
                            .as("mitre, %s sides at pitch %s", sides, pitch)
                            .isCloseTo(Double.parseDouble(pair[0]), within(PRINTED));
                    assertThat(angle.bevel().degrees())
                            .as("bevel, %s sides at pitch %s", sides, pitch)
                            .isCloseTo(Double.parseDouble(pair[1]), within(PRINTED));
                    pairs++;
                }
            }
            assertThat(pairs).isEqualTo(76);
        }

        @Test
        void theOneMisprintOfTheChartIsAMisprint() {
            CompoundAngle angle = CompoundAngle.ofRing(7, 25);
            assertThat(angle.mitre().degrees()).isCloseTo(23.579, within(0.0005));
            assertThat(angle.bevel().degrees()).isCloseTo(10.57, within(PRINTED));
        }

        /** How-to article on angled bevel cuts: sides 5 degrees off upright: gauge 85, blade 44.75, to quarter degrees. */
        @Test
        void squareBoxOfSidesFiveDegreesOffUpright() {
            CompoundAngle angle = CompoundAngle.ofRing(4, 85);
            assertThat(90 - angle.mitre().degrees()).isCloseTo(85, within(0.125));
            assertThat(angle.bevel().degrees()).isCloseTo(44.75, within(0.125));
        }

        /**
         * "Crown Molding Miter Angle and Bevel Angle Settings" (table for spring 52) and "cornice moulding mitre gauge"
         * (table for slope 38); shop tables print 31.62 and 33.86 for 38 at a square corner. The last printed digits of
         * the row for 45 are cut off, not rounded.
         */
        @ParameterizedTest(name = "spring {0} corner {1}")
        @CsvSource({
            "38, 90, 31.6190, 33.8629, 0.00005",
            "38, 135, 14.3064, 17.5512, 0.00005",
            "38, 45, 56.0670, 46.7210, 0.001",
            "52, 1, 89.36550, 37.99830, 0.000005",
            "52, 2, 88.73106, 37.99318, 0.000005",
            "52, 3, 88.09674, 37.98466, 0.000005"
        })
        void crownMouldingLyingFlat(double spring, double corner, double mitre, double bevel, double half) {
            CompoundAngle angle = CompoundAngle.ofCrown(spring, corner);
            assertThat(angle.mitre().degrees()).isCloseTo(mitre, within(half + 1e-7));
            assertThat(angle.bevel().degrees()).isCloseTo(bevel, within(half + 1e-7));
        }

        /** Knowledge base question "Finding Compound Angles for Crown Moulding", 20 April 2007: 35.3 and 30.0. */
        @Test
        void crownOfFortyFiveIsTheSquareBoxLeaningFortyFive() {
            CompoundAngle crown = CompoundAngle.ofCrown(45, 90);
            CompoundAngle box = CompoundAngle.ofRing(4, 45);
            assertThat(crown.mitre().degrees()).isCloseTo(35.3, within(0.05));
            assertThat(crown.bevel().degrees()).isCloseTo(30.0, within(0.05));
            assertThat(crown.mitre().degrees()).isCloseTo(box.mitre().degrees(), within(1e-9));
            assertThat(crown.bevel().degrees()).isCloseTo(box.bevel().degrees(), within(1e-9));
        }

        /** General rule of a saw book: a ring of n upright sides is cut at 360 / n / 2. */
        @ParameterizedTest
        @CsvSource({"4, 45", "5, 36", "6, 30", "8, 22.5"})
        void uprightRingsTakeTheWholeAngleOnTheBlade(int sides, double bevel) {
            CompoundAngle angle = CompoundAngle.ofRing(sides, 90);
            assertThat(angle.mitre().degrees()).isCloseTo(0, within(1e-9));
            assertThat(angle.bevel().degrees()).isCloseTo(bevel, within(1e-9));
        }
    }

    @Nested
    class Properties {
        /** Interior corner to saw setting from square: 90 - A/2. */
        @ParameterizedTest
        @CsvSource({"90, 45", "120, 30", "135, 22.5", "60, 60", "108, 36", "127, 26.5", "270, 45"})
        void anUprightCornerIsHalved(double corner, double bevel) {
            assertThat(CompoundAngle.ofCorner(corner, 0).bevel().degrees()).isCloseTo(bevel, within(1e-9));
            assertThat(CornerCut.mitredTiltDeg(StrictMath.toRadians(corner))).isCloseTo(bevel, within(1e-9));
        }

        /** Against the two faces' normals in space: 93.841 and 123.951 degrees by an independent calculation. */
        @ParameterizedTest
        @CsvSource({"4, 15, 93.841", "6, 20, 123.951", "4, 45, 120.000"})
        void theFacesMeetAtTwiceTheBevel(int sides, double lean, double dihedral) {
            double turn = 2 * StrictMath.PI / sides;
            double s = StrictMath.toRadians(lean);
            double cosBetween = StrictMath.cos(s) * StrictMath.cos(s) * StrictMath.cos(turn)
                    + StrictMath.sin(s) * StrictMath.sin(s);
            double byNormals = 180 - StrictMath.toDegrees(StrictMath.acos(cosBetween));
            double ours = StrictMath.toDegrees(
                    CompoundAngle.ofRing(sides, 90 - lean).dihedral().radians());
            assertThat(ours).isCloseTo(byNormals, within(1e-9)).isCloseTo(dihedral, within(0.0005));
        }

        @Test
        void aRingIsACornerOfItsOwnAngle() {
            List<String> off = new ArrayList<>();
            for (int sides = 3; sides <= 12; sides++) {
                for (int lean = 0; lean < 90; lean += 7) {
                    CompoundAngle ring = CompoundAngle.ofRing(sides, 90 - lean);
                    CompoundAngle corner = CompoundAngle.ofCorner(180 - 360.0 / sides, lean);
                    if (StrictMath.abs(ring.mitre().radians() - corner.mitre().radians()) > 1e-12
                            || StrictMath.abs(ring.bevel().radians()
                                            - corner.bevel().radians())
                                    > 1e-12) {
                        off.add(sides + " sides, lean " + lean);
                    }
                }
            }
            assertThat(off).isEmpty();
        }
    }

    @Nested
    class Refusals {
        @Test
        void twoSidesMakeNoRing() {
            assertThatThrownBy(() -> CompoundAngle.ofRing(2, 0))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("a ring has at least 3 sides, got 2");
        }

        @Test
        void aCornerOfNoAngle() {
            assertThatThrownBy(() -> CompoundAngle.ofCorner(360, 0))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("a corner lies between 0 and 360 degrees, got 360.0");
        }
    }
}
