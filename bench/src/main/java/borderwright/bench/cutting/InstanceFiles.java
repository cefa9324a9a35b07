package borderwright.bench.cutting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringTokenizer;
import java.util.TreeMap;

/**
 * Readers of the usual plain-text files; all numbers are parted by white space.
 *
 * <ul>
 *   <li>pieces: number of pieces, capacity, then one length each;
 *   <li>lengths: number of lengths, capacity, then length and quantity each;
 *   <li>many: number of problems, then for each its name, capacity, number of pieces, best known boards, one length each;
 *   <li>several: number of boards and of lengths, then length and price of each board, then length and quantity each.
 * </ul>
 */
final class InstanceFiles {
    private InstanceFiles() {}

    /**
     * Reads a file.
     *
     * @param form pieces, lengths, many or several
     * @param file a text file
     */
    static List<Instance> read(String form, Path file) throws IOException {
        return parse(form, file.getFileName() + "", Files.readString(file));
    }

    static List<Instance> parse(String form, String name, String text) {
        StringTokenizer words = new StringTokenizer(text);
        return switch (form) {
            case "pieces" -> {
                int n = number(words);
                yield List.of(Instance.of(name, number(words), pieces(words, n)));
            }
            case "lengths" -> {
                int n = number(words);
                int capacity = number(words);
                yield List.of(Instance.ofCounts(name, counts(words, n), Map.of(capacity, 1L)));
            }
            case "several" -> {
                int kinds = number(words);
                int n = number(words);
                Map<Integer, Long> boards = new TreeMap<>();
                for (int k = 0; k < kinds; k++) {
                    boards.put(number(words), (long) number(words));
                }
                yield List.of(Instance.ofCounts(name, counts(words, n), boards));
            }
            case "many" -> many(words);
            default ->
                throw new IllegalArgumentException("no form " + form + "; one of pieces, lengths, many, several");
        };
    }

    private static List<Instance> many(StringTokenizer words) {
        int problems = number(words);
        List<Instance> instances = new ArrayList<>();
        for (int p = 0; p < problems; p++) {
            String name = words.nextToken();
            int capacity = number(words);
            int n = number(words);
            number(words);
            instances.add(Instance.of(name, capacity, pieces(words, n)));
        }
        return instances;
    }

    private static List<Integer> pieces(StringTokenizer words, int n) {
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            pieces.add(number(words));
        }
        return pieces;
    }

    private static Map<Integer, Integer> counts(StringTokenizer words, int n) {
        Map<Integer, Integer> counts = new TreeMap<>();
        for (int i = 0; i < n; i++) {
            counts.merge(number(words), number(words), Integer::sum);
        }
        return counts;
    }

    private static int number(StringTokenizer words) {
        return Integer.parseInt(words.nextToken());
    }
}
