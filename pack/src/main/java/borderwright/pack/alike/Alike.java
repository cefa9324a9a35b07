package borderwright.pack.alike;

import borderwright.pack.figures.NameRanges;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Things of which all that is printed is the same, together, so that sixty like beds take one line.
 *
 * @param names what they are called, in order
 * @param first stands for all
 */
public record Alike<T>(List<String> names, T first) {
    private static final int MOST_NAMED = 4;

    public Alike {
        names = List.copyOf(names);
    }

    /**
     * Groups in the order of their first members.
     *
     * @param name what a thing is called
     * @param printed all that is printed of it but its name
     */
    public static <T> List<Alike<T>> group(List<T> things, Function<T, String> name, Function<T, String> printed) {
        Map<String, List<T>> groups = new LinkedHashMap<>();
        things.forEach(thing -> groups.computeIfAbsent(printed.apply(thing), k -> new ArrayList<>())
                .add(thing));
        return groups.values().stream()
                .map(group -> new Alike<>(group.stream().map(name).toList(), group.get(0)))
                .toList();
    }

    public int count() {
        return names.size();
    }

    /** Their names in short, and with many of them how many. */
    public String inShort() {
        return inShort(names);
    }

    /** The same of any names; each is named once. */
    public static String inShort(List<String> all) {
        List<String> names = all.stream().distinct().toList();
        return NameRanges.of(names) + (names.size() > MOST_NAMED ? " (" + names.size() + ")" : "");
    }
}
