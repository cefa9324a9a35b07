package borderwright.pack.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names in short: those that count up or down by one as a range, the others singly, so that sixty names fit on a line and no range
 * takes in a name that is not meant.
 */
public final class NameRanges {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");
    private static final int LEAST_RANGE = 3;

    private NameRanges() {}

    /** Such as {@code N1 to N12, N14, S2}; names in the order given. */
    public static String of(List<String> names) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        while (from < names.size()) {
            int up = end(names, from, 1);
            int to = up > from ? up : end(names, from, -1);
            if (to - from + 1 >= LEAST_RANGE) {
                parts.add(names.get(from) + " to " + names.get(to));
            } else {
                parts.addAll(names.subList(from, to + 1));
            }
            from = to + 1;
        }
        return String.join(", ", parts);
    }

    /** Such as {@code 1 to 12, 14}; numbers in any order. */
    public static String numbers(List<Integer> numbers) {
        return of(numbers.stream().sorted().map(String::valueOf).toList());
    }

    /** The last of the names that count on by a step from one. */
    private static int end(List<String> names, int from, int step) {
        int to = from;
        while (to + 1 < names.size() && follows(names.get(to), names.get(to + 1), step)) {
            to++;
        }
        return to;
    }

    private static boolean follows(String name, String next, int step) {
        Matcher a = NUMBERED.matcher(name);
        Matcher b = NUMBERED.matcher(next);
        return a.matches()
                && b.matches()
                && a.group(1).equals(b.group(1))
                && Integer.parseInt(b.group(2)) == Integer.parseInt(a.group(2)) + step;
    }
}
