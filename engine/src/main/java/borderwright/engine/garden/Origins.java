package borderwright.engine.garden;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where each value of a garden comes from, by its path in the document, such as {@code strength.soaked soil}.
 *
 * @param byPath one origin for each value that has a default, and for each of these groups that is given, in the order of the paths
 */
public record Origins(SortedMap<String, Origin> byPath) {
    /** Of a garden of which nothing is known. */
    public static final Origins NONE = new Origins(new TreeMap<>());

    public Origins {
        byPath = Collections.unmodifiableSortedMap(new TreeMap<>(byPath));
    }

    /** The origin of a value; nothing where the path names no value with a default. */
    public Optional<Origin> of(String path) {
        return Optional.ofNullable(byPath.get(path));
    }

    /** Whether the document gives the value or the group. */
    public boolean isGiven(String path) {
        return of(path).filter(origin -> origin.kind() == Kind.GIVEN).isPresent();
    }

    /** Who sets a value. */
    public enum Kind {
        GIVEN,
        DEFAULT
    }

    /**
     * One value's origin.
     *
     * @param kind who sets it
     * @param value as it is taken, with its unit where its type has one
     * @param note the source of a default, or the key that gives the value where that is another
     */
    public record Origin(Kind kind, String value, String note) {}
}
