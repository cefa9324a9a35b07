package borderwright.engine.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.sequence.CriticalPath.Activity;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CriticalPathTest {
    /** Arrows (from, to, duration) of an activity-on-arrow network: each waits for all that end where it begins. */
    private static CriticalPath ofArrows(double[][] arrows) {
        List<Activity> activities = new ArrayList<>();
        for (int i = 0; i < arrows.length; i++) {
            List<Integer> after = new ArrayList<>();
            for (int j = 0; j < i; j++) {
                if (arrows[j][1] == arrows[i][0]) {
                    after.add(j);
                }
            }
            activities.add(new Activity(arrows[i][2], after));
        }
        return CriticalPath.of(activities);
    }

    @Nested
    class Published {
        @Test
        @DisplayName(
                "Taylor, Introduction to Management Science, chapter 8 solutions, first network: 20, critical 1-3-4-5-6")
        void first() {
            CriticalPath path = ofArrows(
                    new double[][] {{1, 2, 7}, {1, 3, 10}, {2, 4, 6}, {3, 4, 5}, {3, 5, 4}, {4, 5, 3}, {5, 6, 2}});
            double[][] printed = {
                {0, 7, 2, 9, 2},
                {0, 10, 0, 10, 0},
                {7, 13, 9, 15, 2},
                {10, 15, 10, 15, 0},
                {10, 14, 14, 18, 4},
                {15, 18, 15, 18, 0},
                {18, 20, 18, 20, 0}
            };
            assertThat(path.duration()).isEqualTo(20);
            for (int i = 0; i < printed.length; i++) {
                CriticalPath.Times t = path.times().get(i);
                assertThat(new double[] {t.earlyStart(), t.earlyEnd(), t.lateStart(), t.lateEnd(), t.slack()})
                        .isEqualTo(printed[i]);
            }
        }

        @Test
        @DisplayName("the same, second network, 13 arrows with a dummy: 38, critical 1-3-5-7-8-9")
        void second() {
            CriticalPath path = ofArrows(new double[][] {
                {1, 2, 8},
                {1, 3, 10},
                {1, 4, 9},
                {2, 5, 6},
                {2, 6, 4},
                {3, 5, 5},
                {4, 5, 0},
                {4, 7, 7},
                {5, 7, 12},
                {5, 8, 15},
                {6, 9, 18},
                {7, 8, 4},
                {8, 9, 7}
            });
            assertThat(path.duration()).isEqualTo(38);
            assertThat(path.times().stream().map(CriticalPath.Times::slack))
                    .containsExactly(1.0, 0.0, 6.0, 1.0, 8.0, 0.0, 6.0, 11.0, 0.0, 1.0, 8.0, 0.0, 0.0);
        }

        @Test
        @DisplayName(
                "14 activities with mean durations: early ends A 5.33 D 13.50 E 20.00 H 24.33 K 40.83 N 50.83, slack B 8.00"
                        + " D 1.83 (solved exercise no. 717873)")
        void fourteen() {
            double[][] abm = {
                {5, 5, 7},
                {1, 2, 5},
                {5, 5, 5},
                {4, 8, 13},
                {1, 10, 17},
                {1, 5, 7},
                {2, 6, 9},
                {4, 4, 6},
                {2, 7, 10},
                {2, 4, 7},
                {6, 10, 13},
                {2, 6, 6},
                {2, 2, 3},
                {7, 7, 12}
            };
            List<List<Integer>> after = List.of(
                    List.of(),
                    List.of(),
                    List.of(0),
                    List.of(0),
                    List.of(1, 2),
                    List.of(3),
                    List.of(3),
                    List.of(4, 5),
                    List.of(6, 7),
                    List.of(8),
                    List.of(8),
                    List.of(9),
                    List.of(10),
                    List.of(11, 12));
            List<Activity> activities = new ArrayList<>();
            for (int i = 0; i < abm.length; i++) {
                activities.add(new Activity((abm[i][0] + 4 * abm[i][1] + abm[i][2]) / 6, after.get(i)));
            }
            CriticalPath path = CriticalPath.of(activities);
            assertThat(path.times().get(0).earlyEnd()).isCloseTo(5.33, within(0.005));
            assertThat(path.times().get(3).earlyEnd()).isCloseTo(13.50, within(0.005));
            assertThat(path.times().get(4).earlyEnd()).isCloseTo(20.00, within(0.005));
            assertThat(path.times().get(7).earlyEnd()).isCloseTo(24.33, within(0.005));
            assertThat(path.times().get(10).earlyEnd()).isCloseTo(40.83, within(0.005));
            assertThat(path.duration()).isCloseTo(50.83, within(0.005));
            assertThat(path.times().get(1).slack()).isCloseTo(8.00, within(0.005));
            assertThat(path.times().get(3).slack()).isCloseTo(1.83, within(0.005));
            assertThat(path.times().get(4).isCritical()).isTrue();
        }
    }

    @Test
    void anActivityCannotWaitForALaterOne() {
        assertThatThrownBy(() -> CriticalPath.of(List.of(new Activity(1, List.of(0)))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
