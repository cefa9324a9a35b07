package borderwright.engine.garden.vocabulary;

import java.util.List;

/**
 * Point or corner names in order; written {@code A B C} in the document, or as a list.
 *
 * @param list the names, none blank
 */
public record Names(List<String> list) {
    public Names {
        list = List.copyOf(list);
    }

    public static Names of(String... names) {
        return new Names(List.of(names));
    }

    public int size() {
        return list.size();
    }

    public String get(int i) {
        return list.get(i);
    }

    public String first() {
        return list.get(0);
    }

    public String last() {
        return list.get(list.size() - 1);
    }

    /** As the ends of a line are written: {@code A-B-C}. */
    public String dashed() {
        return String.join("-", list);
    }

    @Override
    public String toString() {
        return String.join(" ", list);
    }
}
