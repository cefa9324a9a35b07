package borderwright.engine.garden.checks;

import borderwright.engine.message.Message;
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
    private static final int MOST_SHOWN = 8;

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
        Message known = NearestName.perhaps(name, set).orElseGet(this::known);
        found.add(new Problem(where, NameMessage.NAME_UNKNOWN.of(kind, name, known)));
    }

    /** Reports each name that is given more than once, at its second place in the list at {@code where}. */
    void reportTwice(String where, List<Problem> found) {
        Map<String, Integer> firstAt = new HashMap<>();
        for (int i = 0; i < list.size(); i++) {
            Integer first = firstAt.putIfAbsent(list.get(i), i);
            if (first != null && !list.get(i).isBlank()) {
                found.add(new Problem(where + "[" + i + "].name", NameMessage.NAME_TWICE.of(kind, list.get(i))));
            }
        }
    }

    private Message known() {
        if (set.size() < 2) {
            return set.stream()
                    .findFirst()
                    .map(NameMessage.NAMES_ONLY::of)
                    .orElseGet(() -> NameMessage.NAMES_NONE.of(kind));
        }
        List<String> shown =
                set.stream().limit(MOST_SHOWN).map(name -> "`" + name + "`").toList();
        return set.size() > MOST_SHOWN
                ? NameMessage.NAMES_AND_MORE.of(shown, set.size() - MOST_SHOWN)
                : NameMessage.NAMES_SEVERAL.of(shown);
    }
}
