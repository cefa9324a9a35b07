package borderwright.engine.survey.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Redundancy numbers, least slips that show and what they do, against closed forms and printed networks. */
class PublishedReliabilityTest {
    /** Baarda (1968): 4.13, its square 17.07, for 0.1 % and 80 %; as later texts print them, 17.075. */
    @Test
    void baardasConstant() {
        assertThat(Adjustment.SHOWS_FROM).isCloseTo(4.13, within(0.005));
        assertThat(Adjustment.SHOWS_FROM * Adjustment.SHOWS_FROM).isCloseTo(17.075, within(0.0005));
    }

    /** Teunissen (2024), Network Quality Control: two equal measurements, 5.84; four stations of a level line, 17.2036. */
    @Test
    void measurementsOfOneQuantity() {
        Adjustment two = adjusted(
                new NetworkBuilder().givenHeight("A", 0).rise("A", "B", 10, 1).rise("A", "B", 10, 1));
        assertThat(two.redundancyNumber(0)).isCloseTo(0.5, within(1e-12));
        assertThat(two.leastSlipThatShows(0).orElseThrow()).isCloseTo(5.84, within(0.005));
        Adjustment one = adjusted(new NetworkBuilder().givenHeight("A", 0).rise("A", "B", 10, 1));
        assertThat(one.leastSlipThatShows(0)).isEmpty();
    }

    /** A loop of levels: each of k legs has a redundancy number of 1/k. */
    @Test
    void aLoopOfEqualLegs() {
        Adjustment loop = adjusted(new NetworkBuilder()
                .givenHeight("A", 0)
                .rise("A", "B", 1, 2)
                .rise("B", "C", 1, 2)
                .rise("C", "D", 1, 2)
                .rise("D", "A", -3, 2));
        for (int leg = 0; leg < 4; leg++) {
            assertThat(loop.leastSlipThatShows(leg).orElseThrow()).isCloseTo(4.132147965 * 2 * 2, within(1e-8));
        }
    }

    /**
     * Level net of the Budapest University of Technology's tutorials (printed: redundancy numbers to 0.1, standard deviations
     * to 0.01 mm). The moves were recomputed from the same input outside this project.
     */
    @Test
    void sixRisesBetweenFourPoints() {
        NetworkBuilder net = new NetworkBuilder().givenHeight("4", 101345);
        net.rise("1", "2", -749, 0.7 * 1.1);
        net.rise("1", "3", -1274, 0.7 * 1.8);
        net.rise("1", "4", -2890, 0.7 * 1.4);
        net.rise("2", "3", -530, 0.7 * 1.5);
        net.rise("2", "4", -2141, 0.7 * 1.9);
        net.rise("3", "4", -1614, 0.7 * 0.9);
        Adjustment a = adjusted(net);
        double[] printed = {0.3, 0.7, 0.5, 0.5, 0.7, 0.2};
        double[] least = {5.67780, 6.28395, 5.66374, 5.86877, 6.53449, 5.37723};
        double[][] moves = {
            {-1.7164, 2.1784, 0.2206},
            {-1.3127, -0.5121, 0.6574},
            {-2.7684, -1.7114, -0.8125},
            {-0.8113, -1.8996, 0.7615},
            {-1.0720, -1.9123, -0.5941},
            {-1.8667, -2.1787, -4.1169}
        };
        for (int i = 0; i < 6; i++) {
            assertThat(a.redundancyNumber(i)).isCloseTo(printed[i], within(0.05));
            assertThat(a.leastSlipThatShows(i).orElseThrow()).isCloseTo(least[i], within(5e-6));
            for (int p = 0; p < 3; p++) {
                assertThat(moves(a, i, String.valueOf(p + 1))).isCloseTo(moves[i][p], within(5e-5));
            }
        }
    }

    /**
     * A level net with printed redundancy numbers, least slips and greatest moves, in the example of a public adjustment
     * program. It takes 1 % and 80 % (3.41745) and the standard deviation after adjustment (0.1063553 of that before).
     */
    @Test
    void twelveRisesBetweenTwoGivenHeights() {
        String[] ends = {"A1", "12", "23", "34", "4B", "A2", "13", "24", "3B", "AB", "14", "2B"};
        double[] read = {850.3, 569.8, 560.2, 169.8, 350.1, 1419.8, 1130.2, 729.8, 520.3, 2499.7, 1299.8, 1080.2};
        double[] sd = {1.5, 1.5, 1.5, 1.5, 1.5, 2, 2, 2, 2, 2.5, 2.2, 2.2};
        NetworkBuilder net = new NetworkBuilder().givenHeight("A", 100_000).givenHeight("B", 102_500);
        for (int i = 0; i < ends.length; i++) {
            net.rise(ends[i].substring(0, 1), ends[i].substring(1), read[i], sd[i]);
        }
        Adjustment a = adjusted(net);
        double[] redundancy = {
            .529291, .530536, .530975, .504044, .523363, .753844, .685839, .705010, .710188, 1.000000, .730345, .796565
        };
        double[] least = {
            .749386, .748506, .748196, .767925, .753618, .837242, .877770, .865753, .862591, .908660, .935664, .895929
        };
        double[] greatest = {
            .352742, .188085, .204495, .205244, .359202, .206092, .148870, .137197, .249989, 0, .127443, .182263
        };
        double asPrinted = 3.41745 * 0.1063553 / Adjustment.SHOWS_FROM;
        for (int i = 0; i < ends.length; i++) {
            int number = i;
            assertThat(a.redundancyNumber(i)).isCloseTo(redundancy[i], within(5e-7));
            assertThat(a.leastSlipThatShows(i).orElseThrow() * asPrinted).isCloseTo(least[i], within(2e-6));
            double most = Stream.of("1", "2", "3", "4")
                    .mapToDouble(p -> Math.abs(moves(a, number, p)))
                    .max()
                    .orElseThrow();
            assertThat(most * asPrinted).isCloseTo(greatest[i], within(2e-6));
        }
    }

    /** How far the least slip that shows moves a height. */
    private static double moves(Adjustment a, int observation, String point) {
        Observation its = a.network().observations().get(observation);
        int unknown = a.network().heightUnknown(a.network().names().indexOf(point));
        return a.influence(its).on(unknown)
                / (its.sd() * its.sd())
                * a.leastSlipThatShows(observation).orElseThrow();
    }

    private static Adjustment adjusted(NetworkBuilder net) {
        Network network = net.build();
        return LeastSquares.adjust(network, network.given()).orElseThrow();
    }
}
