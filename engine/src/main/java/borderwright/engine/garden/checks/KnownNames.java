package borderwright.engine.garden.checks;

import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The names of one kind of thing in a garden.
 *
 * @param kind what they name, such as {@code section}
 * @param list every name as given, twice where it is given twice
 * @param set each once
 */
record KnownNames(String kind, List<String> list, Set<String> set) {
    KnownNames {
        list = List.copyOf(list);
    }

    static KnownNames of(String kind, List<String> names) {
        return new KnownNames(kind, names, new LinkedHashSet<>(names));
    }

    boolean contains(String name) {
        return set.contains(name);
    }

    /** Whether one of them is blank: it may be any name, so none can be called unknown. */
    private boolean isOpen() {
        return set.contains("");
    }

    /** Reports a name that is not among these, with the nearest that is. */
    void require(String name, String where, List<Problem> found) {
        if (name.isBlank() || set.contains(name) || isOpen() || found.size() >= GardenChecks.MOST_FAULTS) {
            return;
        }
        String right = set.isEmpty()
                ? "Describe it under `" + kind + "s`."
                : NearestName.of(name, set)
                        .map(near -> "Perhaps you meant `" + near + "`.")
                        .orElse((set.size() == 1 ? "The only one is " : "Known are ") + first(8) + ".");
        found.add(new Problem("name-unknown", where, "No " + kind + " is named `" + name + "`.", right));
    }

    /** Reports each name that is given more than once, at its second place in the list at {@code where}. */
    void reportTwice(String where, List<Problem> found) {
        Map<String, Integer> firstAt = new HashMap<>();
        for (int i = 0; i < list.size(); i++) {
            Integer first = firstAt.putIfAbsent(list.get(i), i);
            if (first != null && !list.get(i).isBlank()) {
                found.add(new Problem(
                        "name-twice",
                        where + "[" + i + "].name",
                        "Two " + kind + "s are named `" + list.get(i) + "`.",
                        "Give each a name of its own."));
            }
        }
    }

    private String first(int most) {
        List<String> shown =
                set.stream().limit(most).map(name -> "`" + name + "`").toList();
        return String.join(", ", shown) + (set.size() > most ? " and " + (set.size() - most) + " more" : "");
    }
}
