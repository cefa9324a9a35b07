package borderwright.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static final long SEED = 771;

    @Nested
    class Strips {
        @Test
        @DisplayName("strips = ceil((W - o) / (r - o)): exact arithmetic")
        void strips() {
            assertThat(SheetStrips.across(3000, 1000, 150)).isEqualTo(4);
            assertThat(SheetStrips.across(2700, 1000, 150)).isEqualTo(3);
            assertThat(SheetStrips.across(2700.001, 1000, 150)).isEqualTo(4);
            assertThat(SheetStrips.across(900, 1000, 150)).isEqualTo(1);
        }

        @Test
        void runAlongTheSideThatNeedsLeast() {
            Ring ring = Ring.rectangle(0, 0, 2400, 900);
            SheetStrips strips = SheetStrips.over(ring.toJts(), ring, 1000, 150, SheetStrips.Aim.LEAST_SHEET);
            assertThat(strips.stripsMm()).containsExactly(2400L);
            assertThat(strips.seamMm()).isZero();
        }

        @Test
        void overlapAlongTheirSeam() {
            Ring ring = Ring.rectangle(0, 0, 2400, 1200);
            SheetStrips strips = SheetStrips.over(ring.toJts(), ring, 1000, 150, SheetStrips.Aim.LEAST_SHEET);
            // Along the long side 2 x 2400, along the short side 3 x 1200.
            assertThat(strips.stripsMm()).containsExactly(1200L, 1200L, 1200L);
            assertThat(strips.seamMm()).isCloseTo(2400, within(1e-6));
        }

        @Test
        void areFewestWhereSeamsCountFirst() {
            Ring ring = Ring.rectangle(0, 0, 2400, 1200);
            assertThat(SheetStrips.over(ring.toJts(), ring, 1000, 150, SheetStrips.Aim.FEWEST_SEAMS)
                            .stripsMm())
                    .containsExactly(2400L, 2400L);
        }

        @Test
        void areNoLongerThanTheGroundWithinThem() {
            Ring ring = new Ring(List.of(
                    new Point(0, 0),
                    new Point(4000, 0),
                    new Point(4000, 900),
                    new Point(900, 900),
                    new Point(900, 3000),
                    new Point(0, 3000)));
            SheetStrips strips = SheetStrips.over(ring.toJts(), ring, 1000, 150, SheetStrips.Aim.LEAST_SHEET);
            // Along the foot 4000 + 3 x 900, along the leg 3000 + 4 x 900.
            assertThat(strips.sheetMm()).isEqualTo(6600);
        }
    }

    @Nested
    class Rolls {
        @Test
        void asFewAsEveryWayOfPackingTried() {
            SplittableRandom random = new SplittableRandom(SEED);
            for (int n = 0; n < 300; n++) {
                List<Long> strips = new ArrayList<>();
                int count = 1 + random.nextInt(8);
                for (int i = 0; i < count; i++) {
                    strips.add((long) (1 + random.nextInt(10)));
                }
                RollPacking packing = RollPacking.of(strips, 10);
                assertThat(packing.proven()).isTrue();
                assertThat(packing.count())
                        .as("case %d of seed %d", n, SEED)
                        .isEqualTo(every(strips, 0, new long[8], 0));
                long[] used = new long[packing.count()];
                for (int i = 0; i < count; i++) {
                    used[packing.rolls().get(i)] += strips.get(i);
                }
                assertThat(Arrays.stream(used).allMatch(length -> length > 0 && length <= 10))
                        .isTrue();
            }
        }

        private static int every(List<Long> strips, int k, long[] used, int open) {
            if (k == strips.size()) {
                return open;
            }
            int best = Integer.MAX_VALUE;
            for (int roll = 0; roll <= open; roll++) {
                if (used[roll] + strips.get(k) <= 10) {
                    used[roll] += strips.get(k);
                    best = Math.min(best, every(strips, k + 1, used, Math.max(open, roll + 1)));
                    used[roll] -= strips.get(k);
                }
            }
            return best;
        }

        @Test
        void firstFitAloneWouldTakeOneMore() {
            // First fit: 4+4, 3+3+2, 2. Better: 4+3+2 twice.
            assertThat(RollPacking.of(List.of(4L, 4L, 3L, 3L, 2L, 2L), 9))
                    .extracting(RollPacking::count, RollPacking::proven)
                    .containsExactly(2, true);
        }

        @Test
        void aStripLongerThanARollIsJoinedWithTheOverlap() {
            SheetCutter cutter = new SheetCutter(1000, 5000, 200);
            cutter.strip("F1", 1000, 12_000);
            SheetPlan plan = cutter.plan(0);
            // 5000 + 4800 + 2200 = 12 000 of cover, the joins' two overlaps of 200 on top.
            assertThat(plan.lengthMm()).isEqualTo(12_400);
            assertThat(plan.rolls()).isEqualTo(3);
        }
    }
}
