package borderwright.bench.cutting;

import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.OffcutWorth;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** Seeded instances with boards of several lengths, and baskets over several suppliers. */
final class SeveralLengths {
    private static final int MM = 320;

    private SeveralLengths() {}

    /** How the price of a board grows with its length. */
    enum Price {
        /** The length itself. */
        LINEAR,
        /** 0.1 x length to the power 3/2. */
        CONVEX,
        /** 10 x the root of the length. */
        CONCAVE
    }

    /**
     * After the variable-sized sets of Monaci (2002) and of Haouari and Serairi (2009), from memory: pieces of 1, 20 or 50
     * to 100, boards of 60 to 150 (five lengths) or 100 to 150 (three), prices in hundredths.
     */
    static Instance variable(int n, int kinds, int least, Price price, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] lengths = kinds == 3 ? new int[] {100, 120, 150} : new int[] {60, 80, 100, 120, 150};
        Map<Integer, Long> boards = new TreeMap<>();
        for (int length : lengths) {
            double units = units(price, length);
            // Half of the instances have prices in whole units, half in hundredths.
            boards.put(length, seed % 2 == 0 ? (long) Math.ceil(units) : (long) Math.ceil(100 * units));
        }
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            pieces.add(random.nextInt(least, 101));
        }
        return Instance.of("var" + n + "k" + kinds + "w" + least + price + "_" + seed, pieces, boards);
    }

    /**
     * After the larger sets of Haouari and Serairi (2009), from memory: pieces of 1 to 250, boards of 70 to 250 in steps of
     * 30, prices in whole units.
     */
    static Instance sevenLengths(int n, Price price, long seed) {
        SplittableRandom random = new SplittableRandom(seed * 31 + n);
        Map<Integer, Long> boards = new TreeMap<>();
        for (int length = 70; length <= 250; length += 30) {
            boards.put(length, (long) Math.ceil(units(price, length)));
        }
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            pieces.add(random.nextInt(1, 251));
        }
        return Instance.of("seven" + n + price + "_" + seed, pieces, boards);
    }

    private static double units(Price price, int length) {
        return switch (price) {
            case LINEAR -> length;
            case CONVEX -> 0.1 * Math.pow(length, 1.5);
            case CONCAVE -> 10 * Math.sqrt(length);
        };
    }

    /** Like {@link #variable} with longer boards, 100 to 300. */
    static Instance longer(int n, int kinds, double power, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Map<Integer, Long> boards = new TreeMap<>();
        for (int k = 0; k < kinds; k++) {
            int length = 100 + (k * 200) / Math.max(1, kinds - 1);
            boards.put(length, Math.round(100 * Math.pow(length, power) / Math.pow(100, power - 1)));
        }
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            pieces.add(random.nextInt(20, 101));
        }
        return Instance.of("vs" + n + "k" + kinds + "p" + power + "_" + seed, pieces, boards);
    }

    /** Timber: {@code types} lengths of 150 to 2400 mm with kerf 3, six board lengths, {@code n} pieces. */
    static Instance yard(int n, int types, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Map<Integer, Integer> pieces = new TreeMap<>();
        int[] lengths = random.ints(types, 153, 2403).toArray();
        for (int i = 0; i < n; i++) {
            pieces.merge(lengths[random.nextInt(types)], 1, Integer::sum);
        }
        int[] boards = {2403, 3003, 3603, 4203, 4803, 5403};
        long[] prices = {711, 885, 1079, 1255, 1449, 1662};
        Map<Integer, Long> offers = new TreeMap<>();
        for (int k = 0; k < boards.length; k++) {
            offers.put(boards[k], prices[k]);
        }
        return Instance.ofCounts("yard" + n + "x" + types + "_" + seed, pieces, offers);
    }

    /**
     * The garden case: 120 pieces of 25 lengths in two sections, six board lengths, three suppliers whose delivery costs
     * 15 to 35 and is free from 150 to 450; kerf 3 mm, trim 10 mm.
     */
    static Instance garden(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Demand> demands = new ArrayList<>();
        int[] quantity = new int[25];
        for (int k = 0; k < 120; k++) {
            quantity[k < 25 ? k : random.nextInt(25)]++;
        }
        for (int k = 0; k < 25; k++) {
            demands.add(new Demand("s" + k % 2, (long) random.nextInt(250, 2301) * MM, quantity[k], "P" + k));
        }
        List<BoardOffer> boards = new ArrayList<>();
        List<SupplierTerms> terms = new ArrayList<>();
        for (String name : List.of("Alder", "Birch", "Cedar")) {
            terms.add(new SupplierTerms(
                    name, BigDecimal.ZERO, random.nextInt(15, 36) * 100L, random.nextInt(150, 451) * 100L, 0));
            for (int s = 0; s < 2; s++) {
                double perMetre = (s == 0 ? 260 : 410) * (0.92 + 0.16 * random.nextDouble());
                for (int length : new int[] {2400, 3000, 3600, 4200, 4800, 5400}) {
                    double factor = 0.97 + 0.06 * random.nextDouble();
                    boards.add(new BoardOffer(
                            name,
                            "s" + s,
                            (long) length * MM,
                            Math.round(perMetre * length / 1000 * factor),
                            1,
                            Integer.MAX_VALUE));
                }
            }
        }
        return new Instance(
                "garden_" + seed,
                ShoppingProblem.builder(demands)
                        .boards(boards)
                        .terms(terms)
                        .kerfTicks(3L * MM)
                        .trimTicks(10L * MM)
                        .build());
    }

    /** The garden case where every board costs {@code percent} less once {@code from} of it are bought. */
    static Instance gardenWithSteps(long seed, int from, int percent) {
        ShoppingProblem plain = garden(seed).problem();
        List<BoardOffer> boards = new ArrayList<>(plain.boards());
        for (BoardOffer b : plain.boards()) {
            boards.add(b.withPrice(b.packPrice() * (100 - percent) / 100).soldFrom(from));
        }
        return new Instance(
                "steps_" + seed,
                ShoppingProblem.builder(plain.demands())
                        .boards(boards)
                        .terms(plain.terms())
                        .kerfTicks(plain.kerfTicks())
                        .trimTicks(plain.trimTicks())
                        .build());
    }

    /** The garden case where offcuts from 600 mm on are worth 0.80 a metre. */
    static Instance gardenWithOffcuts(long seed) {
        return new Instance("offcuts_" + seed, garden(seed).problem().keeping(new OffcutWorth(600L * MM, 80)));
    }
}
