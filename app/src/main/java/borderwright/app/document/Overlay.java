package borderwright.app.document;

import borderwright.app.document.DocNode.Entry;
import borderwright.app.document.DocNode.Fields;
import borderwright.app.document.DocNode.Items;
import borderwright.app.document.DocNode.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays a variant's changes over the garden: groups merge key by key, lists of named groups merge by name, any other value
 * takes the place of the old one, and nothing ({@code null}) takes the key away. Every part keeps the place where it was
 * written.
 */
final class Overlay {
    private final List<String> changed = new ArrayList<>();

    /** The garden's tree with {@code changes} over it. */
    Fields lay(Fields changes, Fields garden, RecordShape shape) {
        return fields(changes, garden, shape, "");
    }

    /** Paths in the garden that the changes make differ, in the order written. */
    List<String> changed() {
        return List.copyOf(changed);
    }

    private Fields fields(Fields over, Fields under, RecordShape shape, String path) {
        List<Entry> merged = new ArrayList<>(under.entries());
        List<Entry> removed = new ArrayList<>();
        for (Entry change : over.entries()) {
            String at = Place.join(path, change.key());
            int index = indexOf(merged, change.key());
            if (change.value() instanceof Scalar scalar && scalar.isNothing()) {
                removed.add(change);
                if (index >= 0) {
                    merged.remove(index);
                    changed.add(at);
                }
            } else if (index >= 0) {
                Entry old = merged.get(index);
                DocNode value = value(change.value(), old.value(), shape.field(change.key()), at);
                merged.set(index, new Entry(change.key(), change.keyPlace(), value));
            } else {
                merged.add(change);
                changed.add(at);
            }
        }
        return new Fields(under.place(), merged, removed);
    }

    private DocNode value(DocNode over, DocNode under, Optional<FieldShape> field, String path) {
        boolean isGroup = field.isPresent() && field.get().kind() == FieldKind.RECORD;
        if (isGroup && over instanceof Fields overFields && under instanceof Fields underFields) {
            return fields(overFields, underFields, RecordShape.of(field.get().type()), path);
        }
        if (isGroup && over instanceof Items overItems && under instanceof Items underItems) {
            RecordShape shape = RecordShape.of(field.get().type());
            if (shape.isNamed()) {
                return named(overItems, underItems, shape, path);
            }
        }
        if (!over.sameAs(under)) {
            changed.add(path);
        }
        return over;
    }

    private Items named(Items over, Items under, RecordShape shape, String path) {
        List<DocNode> merged = new ArrayList<>(under.items());
        for (DocNode change : over.items()) {
            int index = indexOfNamed(merged, change);
            if (index >= 0 && change instanceof Fields overFields && merged.get(index) instanceof Fields underFields) {
                merged.set(index, fields(overFields, underFields, shape, path + "[" + index + "]"));
            } else {
                changed.add(path + "[" + merged.size() + "]");
                merged.add(change);
            }
        }
        return new Items(under.place(), merged);
    }

    private static int indexOfNamed(List<DocNode> items, DocNode change) {
        Optional<String> name = name(change);
        for (int i = 0; i < items.size() && name.isPresent(); i++) {
            if (name(items.get(i)).equals(name)) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<String> name(DocNode node) {
        return node instanceof Fields fields
                ? fields.value("name")
                        .filter(Scalar.class::isInstance)
                        .map(n -> ((Scalar) n).text().strip())
                : Optional.empty();
    }

    private static int indexOf(List<Entry> entries, String key) {
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }
}
