package borderwright.bench.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Published generators for boards of one length, from memory of their papers, seeded; the published instances themselves
 * were drawn with other random numbers.
 */
final class OneLength {
    private OneLength() {}

    /** Falkenauer (1996) class U: n pieces of 20 to 100, boards of 150. */
    static Instance uniform(int n, long seed) {
        return random("u" + n + "_" + seed, n, 150, 20, 100, seed);
    }

    /** Falkenauer (1996) class T: n / 3 full boards of three pieces, 250 to 499, boards of 1000. */
    static Instance triplets(int n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Integer> pieces = new ArrayList<>();
        for (int k = 0; k < n / 3; k++) {
            int a = random.nextInt(380, 491);
            int b = random.nextInt(250, (1000 - a) / 2);
            pieces.add(a);
            pieces.add(b);
            pieces.add(1000 - a - b);
        }
        return Instance.of("t" + n + "_" + seed, 1000, pieces);
    }

    /** Scholl, Klein and Juergens (1997) set 1: n of 50 to 500, boards of 100, 120, 150, pieces from 1, 20 or 30 to 100. */
    static Instance schollOne(int n, int capacity, int least, long seed) {
        return random("n" + n + "c" + capacity + "w" + least + "_" + seed, n, capacity, least, 100, seed);
    }

    /** Scholl and others (1997) set 2: boards of 1000, on average {@code perBoard} pieces, lengths within a spread. */
    static Instance schollTwo(int n, int perBoard, int spreadPercent, long seed) {
        int mean = 1000 / perBoard;
        int low = mean * (100 - spreadPercent) / 100;
        int high = mean * (100 + spreadPercent) / 100;
        return random("n" + n + "w" + perBoard + "b" + spreadPercent + "_" + seed, n, 1000, low, high, seed);
    }

    /** Scholl and others (1997) set 3: 200 pieces of 20,000 to 35,000, boards of 100,000. */
    static Instance schollThree(long seed) {
        return random("hard_" + seed, 200, 100_000, 20_000, 35_000, seed);
    }

    /** Waescher and Gau (1996) kind: about {@code n} pieces spread widely, boards of 10,000. */
    static Instance waescher(int n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int high = (int) (10_000 * (0.25 + 0.5 * random.nextDouble()));
        return random("wae" + n + "_" + seed, n, 10_000, 1 + random.nextInt(500), high, seed + 1);
    }

    /** Schwerin and Waescher (1997): 100 or 120 pieces of 150 to 200, boards of 1000. */
    static Instance schwerin(int n, long seed) {
        return random("bpp" + n + "_" + seed, n, 1000, 150, 200, seed);
    }

    /** Schoenfield (2002) kind, of which the hard 28 are a choice: 160 to 200 pieces of 1 to 800, boards of 1000. */
    static Instance schoenfield(int n, long seed) {
        return random("hk" + n + "_" + seed, n, 1000, 1, 800, seed);
    }

    /** Delorme, Iori and Martello (2016): n, capacity, least and greatest length as shares of it. */
    static Instance delorme(int n, int capacity, double low, double high, long seed) {
        return random(
                "dim" + n + "c" + capacity + "_" + low + "_" + high + "_" + seed,
                n,
                capacity,
                Math.max(1, (int) (low * capacity)),
                (int) (high * capacity),
                seed);
    }

    /**
     * After the augmented instances of Delorme, Iori and Martello (2016), from memory and not their generator: a small
     * case whose best answer is one board above the rounded-up relaxation, a little disturbed, and full boards of three
     * until there are 200 pieces.
     */
    static Instance augmented(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Integer> pieces = new ArrayList<>();
        // 2 x 44, 3 x 33 and 6 x 12 in boards of 132: relaxation 259 / 132, best answer 3 (Fieldhouse 1990, from
        // memory).
        for (int[] kind : new int[][] {{44, 2}, {33, 3}, {12, 6}}) {
            for (int k = 0; k < kind[1]; k++) {
                pieces.add(kind[0] * 18 + random.nextInt(0, 2));
            }
        }
        int capacity = 132 * 18 + 2;
        while (pieces.size() < 199) {
            int a = random.nextInt(capacity / 5, capacity / 2);
            int b = random.nextInt(capacity / 5, (capacity - a) * 3 / 4);
            pieces.add(a);
            pieces.add(b);
            pieces.add(capacity - a - b);
        }
        return Instance.of("aug_" + seed, capacity, pieces);
    }

    private static Instance random(String name, int n, int capacity, int least, int most, long seed) {
        SplittableRandom random = new SplittableRandom(seed * 7919 + n);
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            pieces.add(random.nextInt(least, most + 1));
        }
        return Instance.of(name, capacity, pieces);
    }
}
