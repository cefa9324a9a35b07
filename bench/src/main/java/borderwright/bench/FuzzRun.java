package borderwright.bench;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Runs many damaged cases, one after the other, and prints what came of them. */
final class FuzzRun {
    private FuzzRun() {}

    /** One case: what is wrong with how it was answered, its kinds counted. */
    interface Cases {
        Optional<String> complaint(long n, Map<String, Long> kinds) throws IOException;
    }

    /**
     * Runs cases {@code first} to {@code first + cases - 1}.
     *
     * @param args number of cases, seed, first case; a million from {@code seed} when none are given
     * @param of the cases of a seed
     * @throws IllegalStateException when a case was badly answered, once all have been run
     */
    static void run(String[] args, long seed, CasesOfSeed of) throws IOException {
        long cases = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
        long chosen = args.length > 1 ? Long.parseLong(args[1]) : seed;
        long first = args.length > 2 ? Long.parseLong(args[2]) : 0;
        Cases all = of.cases(chosen);
        Map<String, Long> kinds = new TreeMap<>();
        long bad = 0;
        long slowest = 0;
        long slowestNanos = 0;
        long start = System.nanoTime();
        for (long n = first; n < first + cases; n++) {
            long before = System.nanoTime();
            Optional<String> complaint = all.complaint(n, kinds);
            long nanos = System.nanoTime() - before;
            if (nanos > slowestNanos) {
                slowestNanos = nanos;
                slowest = n;
            }
            if (complaint.isPresent()) {
                bad++;
                System.out.println("case " + n + " of seed " + chosen + ": " + complaint.get());
            }
        }
        kinds.forEach((kind, count) -> System.out.println(count + "\t" + kind));
        System.out.println(cases + " cases of seed " + chosen + " in " + (System.nanoTime() - start) / 1_000_000_000
                + " s, slowest " + slowestNanos / 1_000_000 + " ms (case " + slowest + "), " + bad + " badly answered");
        if (bad > 0) {
            throw new IllegalStateException(bad + " cases were badly answered");
        }
    }

    /** Every seed has its own cases. */
    interface CasesOfSeed {
        Cases cases(long seed) throws IOException;
    }
}
