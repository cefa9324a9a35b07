package borderwright.engine.survey;

import static borderwright.engine.survey.PublishedNetworksTest.TENTH_MM;
import static borderwright.engine.survey.PublishedNetworksTest.adjusted;
import static borderwright.engine.survey.PublishedNetworksTest.point;
import static borderwright.engine.survey.PublishedNetworksTest.s0;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.NetworkBuilder;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Level nets of textbooks, with their printed answers. */
class PublishedLevelNetsTest {
    @Nested
    class Levels {
        /** Ghilani (2010), ex. 12.6 p. 218; Krumm ex. 2.1 pp. 6-9. */
        @Test
        void ghilaniLevelNet() {
            Adjustment a = adjusted(new NetworkBuilder()
                    .givenHeight("A", 437.596)
                    .rise("A", "B", 10.509, 0.006)
                    .rise("B", "C", 5.360, 0.004)
                    .rise("C", "D", -8.523, 0.005)
                    .rise("D", "A", -7.348, 0.003)
                    .rise("B", "D", -3.167, 0.004)
                    .rise("A", "C", 15.881, 0.012));
            assertHeight(a, "B", 448.1087, 2.30);
            assertHeight(a, "C", 453.4685, 2.64);
            assertHeight(a, "D", 444.9436, 1.76);
            assertThat(s0(a)).isCloseTo(0.6512, within(0.00005));
            assertThat(a.weightedSquares()).isCloseTo(1.27212, within(0.000005));
            double[] residualsMm = {3.71, -0.24, -1.86, 0.39, 1.89, -8.53};
            for (int i = 0; i < 6; i++) {
                assertThat(1000 * a.residual(i)).isCloseTo(residualsMm[i], within(0.005));
            }
        }

        /** Niemeier (2008), Ausgleichungsrechnung, 2nd ed., pp. 153-156, with its rounded weights. */
        @Test
        void niemeierLevelNet() {
            Object[][] rises = {
                {"12", -8.206, 1.61}, {"13", -5.734, 0.83}, {"23", 2.481, 2.22}, {"24", -4.433, 1.25},
                {"34", -6.909, 1.00}, {"35", -18.872, 0.91}, {"36", 4.035, 2.27}, {"45", -11.962, 1.39},
                {"56", 22.904, 1.20}
            };
            NetworkBuilder net = new NetworkBuilder().givenHeight("6", 67.228);
            for (Object[] r : rises) {
                String ends = (String) r[0];
                net.rise(ends.substring(0, 1), ends.substring(1), (double) r[1], 1 / Math.sqrt((double) r[2]));
            }
            Adjustment a = adjusted(net);
            assertHeight(a, "1", 68.9235, 3.12);
            assertHeight(a, "2", 60.7153, 2.60);
            assertHeight(a, "3", 63.1938, 1.97);
            assertHeight(a, "4", 56.2838, 2.63);
            assertHeight(a, "5", 44.3226, 2.30);
        }

        /**
         * Mikhail and Ackermann (1976), table 7-1 p. 147 (input; heights recomputed independently with weights 1/km):
         * eight lines between five points.
         */
        @Test
        void mikhailLevelNet() {
            Object[][] rises = {
                {"AB", 18.1, 25.42}, {"BC", 9.4, 10.34}, {"CA", 14.2, -35.20}, {"BD", 17.6, -15.54},
                {"DE", 13.5, 21.32}, {"EC", 9.9, 4.82}, {"EA", 13.8, -31.02}, {"CD", 14.0, -26.11}
            };
            NetworkBuilder net = new NetworkBuilder().givenHeight("A", 0);
            for (Object[] r : rises) {
                String ends = (String) r[0];
                net.rise(ends.substring(0, 1), ends.substring(1), (double) r[2], Math.sqrt((double) r[1]));
            }
            Adjustment a = adjusted(net);
            assertThat(a.positions().height(point(a, "B"))).isCloseTo(25.22062, within(0.000005));
            assertThat(a.positions().height(point(a, "C"))).isCloseTo(35.53543, within(0.000005));
            assertThat(a.positions().height(point(a, "D"))).isCloseTo(9.53393, within(0.000005));
            assertThat(a.positions().height(point(a, "E"))).isCloseTo(30.84603, within(0.000005));
            assertThat(s0(a) * s0(a)).isCloseTo(0.0040428, within(0.00000005));
        }

        private void assertHeight(Adjustment a, String name, double height, double sdMm) {
            int p = point(a, name);
            assertThat(a.positions().height(p)).isCloseTo(height, within(TENTH_MM));
            assertThat(1000 * s0(a) * a.sdHeight(p)).isCloseTo(sdMm, within(0.005));
        }
    }
}
