package borderwright.engine.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Strips packed into the fewest rolls (bin packing).
 *
 * <p>First fit, longest first; where that takes more rolls than the lower bound of Martello and Toth (1990, their L2), a
 * search puts strip after strip, longest first, into each roll with a different rest, and stops after a fixed number of
 * steps. The answer tells whether it is proven least.
 *
 * @param rolls index of the roll of each strip, from 0, in the strips' order
 * @param count rolls needed
 * @param proven whether no fewer rolls can do
 */
public record RollPacking(List<Integer> rolls, int count, boolean proven) {
    private static final int MOST_STEPS = 20_000;

    public RollPacking {
        rolls = List.copyOf(rolls);
    }

    /** A strip in parts that a roll gives: one longer than a roll is joined with an overlap, mm. */
    public static List<Long> joined(long stripMm, long rollMm, long overlapMm) {
        List<Long> parts = new ArrayList<>();
        long left = stripMm;
        while (left > rollMm) {
            parts.add(rollMm);
            left -= rollMm - overlapMm;
        }
        parts.add(left);
        return parts;
    }

    /**
     * Packs strips.
     *
     * @param stripsMm lengths, each above 0 and no more than a roll, mm
     * @param rollMm length of a roll, mm
     */
    public static RollPacking of(List<Long> stripsMm, long rollMm) {
        for (long strip : stripsMm) {
            if (strip <= 0 || strip > rollMm) {
                throw new IllegalArgumentException("a strip of " + strip + " mm does not fit a roll of " + rollMm);
            }
        }
        return new Search(stripsMm, rollMm).run();
    }

    /** L2: strips longer than half a roll each need one; what they leave room for is counted off the rest. */
    static int leastRolls(List<Long> stripsMm, long rollMm) {
        int best = 0;
        List<Long> limits = new ArrayList<>(
                stripsMm.stream().filter(s -> 2 * s <= rollMm).distinct().toList());
        limits.add(0L);
        for (long limit : limits) {
            long alone = stripsMm.stream().filter(s -> s > rollMm - limit).count();
            List<Long> big = stripsMm.stream()
                    .filter(s -> 2 * s > rollMm && s <= rollMm - limit)
                    .toList();
            long small = stripsMm.stream()
                    .filter(s -> 2 * s <= rollMm && s >= limit)
                    .mapToLong(Long::longValue)
                    .sum();
            long room = big.size() * rollMm
                    - big.stream().mapToLong(Long::longValue).sum();
            long more = Math.max(0, (small - room + rollMm - 1) / rollMm);
            best = (int) Math.max(best, alone + big.size() + more);
        }
        return best;
    }

    private static final class Search {
        private final long rollMm;
        private final int[] order;
        private final long[] length;
        private final int[] place;
        private int[] best;
        private int bestCount;
        private final int bound;
        private int steps;

        Search(List<Long> stripsMm, long rollMm) {
            this.rollMm = rollMm;
            this.order = IntStream.range(0, stripsMm.size())
                    .boxed()
                    .sorted(Comparator.comparing((Integer i) -> -stripsMm.get(i))
                            .thenComparing(i -> i))
                    .mapToInt(Integer::intValue)
                    .toArray();
            this.length = Arrays.stream(order).mapToLong(stripsMm::get).toArray();
            this.place = new int[order.length];
            this.bound = leastRolls(stripsMm, rollMm);
            this.best = new int[order.length];
            this.bestCount = firstFit();
        }

        RollPacking run() {
            boolean finished = bestCount == bound || place(0, 0, new long[bestCount]);
            int[] rolls = new int[order.length];
            for (int k = 0; k < order.length; k++) {
                rolls[order[k]] = best[k];
            }
            return new RollPacking(Arrays.stream(rolls).boxed().toList(), bestCount, finished || bestCount == bound);
        }

        private int firstFit() {
            long[] left = new long[order.length];
            int open = 0;
            for (int k = 0; k < order.length; k++) {
                int roll = 0;
                while (roll < open && left[roll] < length[k]) {
                    roll++;
                }
                if (roll == open) {
                    left[open++] = rollMm;
                }
                left[roll] -= length[k];
                best[k] = roll;
            }
            return open;
        }

        /** Whether the search below here was finished, or need not be. */
        private boolean place(int k, int open, long[] left) {
            if (bestCount == bound) {
                return true;
            }
            if (k == order.length) {
                best = place.clone();
                bestCount = open;
                return true;
            }
            if (++steps > MOST_STEPS) {
                return false;
            }
            boolean finished = true;
            for (int roll = 0; roll < open; roll++) {
                if (left[roll] >= length[k] && firstWithThatRest(left, roll)) {
                    left[roll] -= length[k];
                    place[k] = roll;
                    finished &= place(k + 1, open, left);
                    left[roll] += length[k];
                }
            }
            if (open + 1 < bestCount) {
                left[open] = rollMm - length[k];
                place[k] = open;
                finished &= place(k + 1, open + 1, left);
            }
            return finished;
        }

        private static boolean firstWithThatRest(long[] left, int roll) {
            for (int other = 0; other < roll; other++) {
                if (left[other] == left[roll]) {
                    return false;
                }
            }
            return true;
        }
    }
}
