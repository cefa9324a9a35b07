package borderwright.app.document;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One part of a document as written, before anyone knows what it should be. */
sealed interface DocNode {
    Place place();

    /** What it is, for the choice of a sentence: {@code nothing}, {@code text}, {@code list} or {@code group}. */
    default String kind() {
        if (this instanceof Scalar scalar) {
            return scalar.isNothing() ? "nothing" : "text";
        }
        return this instanceof Items ? "list" : "group";
    }

    /** The same content, wherever it stands. */
    boolean sameAs(DocNode other);

    /**
     * A text.
     *
     * @param plain whether it stands without quotes: only then can it be a number or nothing
     */
    record Scalar(Place place, String text, boolean plain) implements DocNode {
        private static final Set<String> NOTHING = Set.of("", "~", "null", "Null", "NULL");

        /** The core schema's null. */
        boolean isNothing() {
            return plain && NOTHING.contains(text);
        }

        @Override
        public boolean sameAs(DocNode other) {
            return other instanceof Scalar scalar && scalar.text.equals(text) && scalar.plain == plain;
        }
    }

    /** A list. */
    record Items(Place place, List<DocNode> items) implements DocNode {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public boolean sameAs(DocNode other) {
            if (!(other instanceof Items list) || list.items.size() != items.size()) {
                return false;
            }
            for (int i = 0; i < items.size(); i++) {
                if (!items.get(i).sameAs(list.items.get(i))) {
                    return false;
                }
            }
            return true;
        }
    }

    /**
     * A group of keys, each once.
     *
     * @param removed places of keys that a variant takes away, so that a fault about one can point there
     */
    record Fields(Place place, List<Entry> entries, List<Entry> removed) implements DocNode {
        public Fields {
            entries = List.copyOf(entries);
            removed = List.copyOf(removed);
        }

        Optional<Entry> entry(String key) {
            return entries.stream().filter(e -> e.key.equals(key)).findFirst();
        }

        Optional<DocNode> value(String key) {
            return entry(key).map(Entry::value);
        }

        Optional<Entry> removed(String key) {
            return removed.stream().filter(e -> e.key.equals(key)).findFirst();
        }

        /** The same group without one key. */
        Fields without(String key) {
            return new Fields(
                    place, entries.stream().filter(e -> !e.key.equals(key)).toList(), removed);
        }

        @Override
        public boolean sameAs(DocNode other) {
            if (!(other instanceof Fields fields) || fields.entries.size() != entries.size()) {
                return false;
            }
            return entries.stream()
                    .allMatch(e ->
                            fields.value(e.key).filter(v -> v.sameAs(e.value)).isPresent());
        }
    }

    /** Something that has been refused and reported already. */
    record Refused(Place place) implements DocNode {
        @Override
        public boolean sameAs(DocNode other) {
            return other instanceof Refused;
        }
    }

    /**
     * One key with its value.
     *
     * @param keyPlace where the key stands
     */
    record Entry(String key, Place keyPlace, DocNode value) {}
}
