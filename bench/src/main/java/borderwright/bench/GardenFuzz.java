package borderwright.bench;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.app.document.LocatedProblem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Reads gardens that were damaged at random: each must come out sound, or with faults that a person can act on, never with
 * an exception.
 *
 * <p>Case {@code n} of a seed is always the same document, so that what fails can be read again alone: {@code bench/run
 * main GardenFuzz 1 SEED n}.
 */
public final class GardenFuzz {
    private final List<byte[]> gardens;
    private final long seed;

    /**
     * Damages these gardens.
     *
     * @param gardens at least one sound garden document
     * @param seed decides every case
     */
    public GardenFuzz(List<byte[]> gardens, long seed) {
        if (gardens.isEmpty()) {
            throw new IllegalArgumentException("no gardens to damage");
        }
        this.gardens = List.copyOf(gardens);
        this.seed = seed;
    }

    /** The gardens of a folder, in the order of their names. */
    public static List<byte[]> gardensIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(GardenFuzz::bytes)
                    .toList();
        }
    }

    /** The damaged document of case {@code n}. */
    public byte[] damaged(long n) {
        return new Damage(gardens, seed + n * 0x9E3779B97F4A7C15L).document();
    }

    /** What is wrong with how a document was read; empty when all is well. Counts the kinds of fault into {@code kinds}. */
    public static Optional<String> complaint(byte[] document, Map<String, Long> kinds) {
        DocumentAnswer answer;
        try {
            answer = GardenReader.read(document);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return Optional.of("threw " + e);
        }
        if (!(answer instanceof DocumentAnswer.Faulty faulty)) {
            kinds.merge("(sound)", 1L, Long::sum);
            return Optional.empty();
        }
        faulty.faults().stream()
                .map(fault -> fault.problem().code())
                .distinct()
                .forEach(code -> kinds.merge(code, 1L, Long::sum));
        long lines = 2
                + new String(document, StandardCharsets.UTF_8)
                        .chars()
                        .filter(c -> c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029)
                        .count();
        return faulty.faults().stream()
                .filter(fault -> !isPlain(fault, lines))
                .findFirst()
                .map(fault -> "said " + fault.print("garden.yaml"));
    }

    /** A place inside the document and a sentence on one line, in no program's terms. */
    private static boolean isPlain(LocatedProblem fault, long lines) {
        String printed = fault.print("garden.yaml");
        return fault.line() <= lines
                && printed.endsWith(".")
                && printed.chars().noneMatch(Character::isISOControl)
                && !printed.contains("Exception")
                && !printed.contains("java.")
                && !printed.contains("borderwright.");
    }

    /** Arguments: number of cases, seed, first case; by default a million from 20260301. */
    public static void main(String[] args) throws IOException {
        long cases = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 20260301;
        long first = args.length > 2 ? Long.parseLong(args[2]) : 0;
        GardenFuzz fuzz = new GardenFuzz(gardensIn(Path.of("examples")), seed);
        Map<String, Long> kinds = new TreeMap<>();
        long bad = 0;
        long slowest = 0;
        long slowestNanos = 0;
        long start = System.nanoTime();
        for (long n = first; n < first + cases; n++) {
            long before = System.nanoTime();
            Optional<String> complaint = complaint(fuzz.damaged(n), kinds);
            long nanos = System.nanoTime() - before;
            if (nanos > slowestNanos) {
                slowestNanos = nanos;
                slowest = n;
            }
            if (complaint.isPresent()) {
                bad++;
                System.out.println("case " + n + " of seed " + seed + ": " + complaint.get());
            }
        }
        kinds.forEach((kind, count) -> System.out.println(count + "\t" + kind));
        System.out.println(cases + " cases of seed " + seed + " in " + (System.nanoTime() - start) / 1_000_000_000
                + " s, slowest " + slowestNanos / 1_000_000 + " ms (case " + slowest + "), " + bad + " badly answered");
        if (bad > 0) {
            throw new IllegalStateException(bad + " cases were badly answered");
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
