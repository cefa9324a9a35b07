package borderwright.pack.alike;

import borderwright.pack.figures.NameRanges;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Labels of many pieces in short. A label is the name of a planter, a hyphen and a part, such as {@code N12-1a} or
 * {@code N12-cap-a}; planters that need the same parts share a line.
 */
public final class PartLabels {
    /** So many labels can still be found and ticked one by one. */
    private static final int MOST_SINGLE = 48;

    private PartLabels() {}

    public static boolean areMany(List<String> labels) {
        return labels.size() > MOST_SINGLE;
    }

    /** The parts of each planter, planters and parts in the order of the labels; those of no planter under an empty name. */
    public static Map<String, List<String>> byPlanter(List<String> labels) {
        Map<String, List<String>> partsOf = new LinkedHashMap<>();
        for (String label : labels) {
            int hyphen = label.indexOf('-');
            String planter = hyphen < 0 ? "" : label.substring(0, hyphen);
            partsOf.computeIfAbsent(planter, k -> new ArrayList<>()).add(label.substring(hyphen + 1));
        }
        return partsOf;
    }

    /** A line for each set of parts, such as {@code 1a, 1c of N1 to N20 (20)}; in the order of the first labels. */
    public static List<String> inShort(List<String> labels) {
        Map<String, List<String>> partsOf = byPlanter(labels);
        Map<String, List<String>> planters = new LinkedHashMap<>();
        partsOf.forEach((planter, parts) ->
                planters.computeIfAbsent(sorted(parts), k -> new ArrayList<>()).add(planter));
        List<String> lines = new ArrayList<>();
        planters.forEach((parts, names) -> {
            lines.add(names.equals(List.of("")) ? parts : parts + " of " + Alike.inShort(inOrder(names)));
        });
        return lines;
    }

    private static String sorted(List<String> parts) {
        return NameRanges.of(inOrder(parts));
    }

    /** Names by letters, then by number, so that neighbours come together. */
    public static List<String> inOrder(List<String> names) {
        return names.stream().sorted(Comparator.comparing(PartLabels::key)).toList();
    }

    private static String key(String name) {
        String letters = name.replaceAll("\\d+.*", "");
        String rest = name.substring(letters.length());
        return letters + " " + "0".repeat(Math.max(0, 8 - rest.length())) + rest;
    }
}
