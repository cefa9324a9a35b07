package borderwright.engine.buildup.walls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoardJoiningTest {
    @Nested
    class Limits {
        @Test
        void aBoardThatIsLongEnoughHasNone() {
            assertThat(BoardJoining.choose(0, 4800, 4800, List.of(1200.0, 2400.0), Set.of()))
                    .contains(List.of());
        }

        @Test
        void supportsTakenBelowArePassedOver() {
            List<Double> supports = List.of(1200.0, 2400.0, 3600.0);
            assertThat(BoardJoining.choose(0, 4800, 3700, supports, Set.of())).contains(List.of(2400.0));
            assertThat(BoardJoining.choose(0, 4800, 3700, supports, Set.of(2400.0)))
                    .contains(List.of(3600.0));
        }

        @Test
        void aGapLongerThanTheLongestPieceCannotBeJoined() {
            assertThat(BoardJoining.choose(0, 4800, 2000, List.of(1200.0, 3600.0), Set.of()))
                    .isEmpty();
        }
    }

    @Nested
    class Properties {
        @ParameterizedTest(name = "seed {0}")
        @ValueSource(longs = {1, 2, 3})
        void noChoiceHasFewerOrMoreEvenPieces(long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            for (int i = 0; i < 300; i++) {
                double to = random.nextDouble(2500, 9000);
                List<Double> supports = new ArrayList<>();
                for (double s = 250 + random.nextDouble(400); s < to - 250; s += random.nextDouble(250, 1100)) {
                    supports.add(s);
                }
                double longest = random.nextDouble(1200, 5000);
                Optional<List<Double>> found = BoardJoining.choose(0, to, longest, supports, Set.of());
                double best = brute(0, to, longest, supports, 0);
                assertThat(found.map(joints -> cost(joints, to)).orElse(Double.POSITIVE_INFINITY))
                        .as("seed %s case %s", seed, i)
                        .isEqualTo(best);
            }
        }

        /** Pieces first, then the sum of squares, in one number. */
        private static double cost(List<Double> joints, double to) {
            double from = 0;
            double sum = 0;
            for (double joint : joints) {
                sum += step(joint - from);
                from = joint;
            }
            return Math.rint(sum + step(to - from));
        }

        private static double step(double piece) {
            return 1e9 + piece * piece;
        }

        private static double brute(double from, double to, double longest, List<Double> supports, double sum) {
            double best = to - from <= longest ? Math.rint(sum + step(to - from)) : Double.POSITIVE_INFINITY;
            for (double support : supports) {
                if (support > from && support - from <= longest) {
                    best = Math.min(best, brute(support, to, longest, supports, sum + step(support - from)));
                }
            }
            return best;
        }
    }
}
