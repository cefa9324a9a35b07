package borderwright.engine.buying.suppliers;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.prices.GoodsOffer;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GoodsCoverTest {
    private static GoodsCover cover(long wanted, long[] content, int[] available) {
        int[] any = new int[content.length];
        Arrays.fill(any, 1);
        return cover(wanted, content, available, any);
    }

    private static GoodsCover cover(long wanted, long[] content, int[] available, int[] from) {
        List<GoodsOffer> offers = IntStream.range(0, content.length)
                .mapToObj(o -> new GoodsOffer("A", "screws", 1, BigDecimal.valueOf(content[o]), available[o])
                        .soldFrom(from[o]))
                .toList();
        return new GoodsCover(
                new GoodsNeed("screws", BigDecimal.valueOf(wanted), "each"), offers, new int[content.length]);
    }

    private static boolean[] all(int n) {
        boolean[] allowed = new boolean[n];
        Arrays.fill(allowed, true);
        return allowed;
    }

    @Test
    void oneMissingOfVeryManyIsSeen() {
        // 2^53 + 1 has no double of its own; the sum of what is to be had falls short by exactly one.
        long wanted = (1L << 53) + 1;
        assertThat(cover(wanted, new long[] {1L << 52}, new int[] {2}).canBeMet())
                .isFalse();
        assertThat(cover(wanted, new long[] {1L << 52, 1}, new int[] {2, 1}).canBeMet())
                .isTrue();
    }

    @Test
    void theLeastIsWhatTryingEverythingFinds() {
        for (long seed = 0; seed < 500; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int n = random.nextInt(1, 4);
            long[] content = random.longs(n, 1, 12).toArray();
            int[] from = random.ints(n, 1, 4).toArray();
            int[] available =
                    Arrays.stream(from).map(f -> f + random.nextInt(0, 4)).toArray();
            long[] cost = random.longs(n, 0, 20).toArray();
            long wanted = random.nextInt(1, 30);
            GoodsCover cover = cover(wanted, content, available, from);
            GoodsCover.Choice choice = cover.cheapest(cost, all(n));
            long least = least(cost, content, available, from, 0, wanted);
            assertThat(cover.isMetBy(choice.counts())).as("seed %d", seed).isEqualTo(least < Long.MAX_VALUE);
            if (least < Long.MAX_VALUE) {
                long paid = IntStream.range(0, n)
                        .mapToLong(o -> choice.counts()[o] * cost[o])
                        .sum();
                assertThat(paid).as("seed %d", seed).isEqualTo(least);
                assertThat(choice.least()).as("seed %d", seed).isEqualTo(least);
            }
        }
    }

    @Test
    void aSearchThatIsGivenUpClaimsNoMoreThanIsTrue() {
        // Contents that divide nothing, at nearly one price for each: far more ways than are looked at.
        int n = 24;
        long[] content = new long[n];
        long[] cost = new long[n];
        int[] available = new int[n];
        for (int o = 0; o < n; o++) {
            content[o] = 100_003 + 977L * o;
            cost[o] = content[o] + o % 3;
            available[o] = 1;
        }
        long wanted = Arrays.stream(content).sum() / 2 + 1;
        GoodsCover.Choice choice = cover(wanted, content, available).cheapest(cost, all(n));
        long paid = IntStream.range(0, n)
                .mapToLong(o -> choice.counts()[o] * cost[o])
                .sum();
        assertThat(choice.least()).isLessThanOrEqualTo(paid).isGreaterThanOrEqualTo(wanted);
    }

    private static long least(long[] cost, long[] content, int[] available, int[] from, int o, long wanted) {
        if (wanted <= 0) {
            return 0;
        }
        long best = Long.MAX_VALUE;
        for (int count = 0; o < cost.length && count <= available[o]; count++) {
            long rest = count > 0 && count < from[o]
                    ? Long.MAX_VALUE
                    : least(cost, content, available, from, o + 1, wanted - count * content[o]);
            best = rest == Long.MAX_VALUE ? best : Math.min(best, rest + count * cost[o]);
        }
        return best;
    }
}
