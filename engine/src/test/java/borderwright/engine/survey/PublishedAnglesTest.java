package borderwright.engine.survey;

import static borderwright.engine.survey.PublishedNetworksTest.ARC_SECOND;
import static borderwright.engine.survey.PublishedNetworksTest.TENTH_MM;
import static borderwright.engine.survey.PublishedNetworksTest.adjusted;
import static borderwright.engine.survey.PublishedNetworksTest.assertPlace;
import static borderwright.engine.survey.PublishedNetworksTest.assertSd;
import static borderwright.engine.survey.PublishedNetworksTest.dms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.NetworkBuilder;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Networks of angles in textbooks, with their printed answers. */
class PublishedAnglesTest {
    private static final double GON = StrictMath.PI / 200;

    @Nested
    class Angles {
        /** Ghilani (2010), ex. 15.4 p. 271: intersection by angles alone. */
        @Test
        void ghilaniIntersection() {
            double sd = 0.001 * GON;
            Adjustment a = adjusted(new NetworkBuilder()
                    .given("R", 865.40, 4527.15)
                    .given("S", 2432.55, 2047.25)
                    .given("T", 2865.22, 27.15)
                    .turn("U", "R", "S", -dms(50, 6, 50), sd)
                    .turn("R", "S", "U", -dms(101, 30, 47), sd)
                    .turn("U", "S", "T", -dms(98, 41, 17), sd)
                    .turn("S", "T", "U", -dms(59, 17, 1), sd));
            assertPlace(a, "U", 6860.7260, 3727.4751, TENTH_MM);
            assertSd(a, "U", 378.17, 178.09, 0.005);
        }

        /** Ghilani (2010), ex. 15.5 p. 277: resection by angles alone. */
        @Test
        void ghilaniResection() {
            Adjustment a = adjusted(new NetworkBuilder()
                    .given("P", 1303.599, 1458.615)
                    .given("Q", 1636.436, 1310.468)
                    .given("R", 1503.395, 888.362)
                    .given("S", 1506.262, 785.061)
                    .turn("P", "U", "Q", -33.8805555555556 * GON, 5 * ARC_SECOND)
                    .turn("Q", "U", "R", -42.7873456790123 * GON, 6 * ARC_SECOND)
                    .turn("R", "U", "S", -11.6657407407407 * GON, 6 * ARC_SECOND));
            assertPlace(a, "U", 999.9989, 1000.0253, TENTH_MM);
            assertSd(a, "U", 20.57, 42.68, 0.005);
        }

        /**
         * Mikhail and Ackermann (1976), Observations and Least Squares, ex. 7.1 pp. 140-141: the three angles of a
         * triangle miss 180 degrees by 3 seconds and take one each.
         */
        @Test
        void mikhailTriangleClosure() {
            Adjustment a = adjusted(new NetworkBuilder()
                    .given("A", 0, 0)
                    .given("B", 1000, 0)
                    .turn("B", "A", "C", dms(40, 19, 2), ARC_SECOND)
                    .turn("C", "B", "A", dms(70, 30, 1), ARC_SECOND)
                    .turn("A", "C", "B", dms(69, 11, 0), ARC_SECOND));
            for (int i = 0; i < 3; i++) {
                assertThat(a.residual(i) / ARC_SECOND).isCloseTo(-1, within(1e-6));
            }
            assertThat(a.weightedSquares() / a.degreesOfFreedom()).isCloseTo(3, within(1e-6));
        }
    }
}
