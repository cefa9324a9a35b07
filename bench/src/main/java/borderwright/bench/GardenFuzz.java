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
        List<byte[]> gardens = gardensIn(Path.of("examples"));
        FuzzRun.run(args, 20260301, seed -> {
            GardenFuzz fuzz = new GardenFuzz(gardens, seed);
            return (n, kinds) -> complaint(fuzz.damaged(n), kinds);
        });
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
