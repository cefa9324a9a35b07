package borderwright.app.document;

import borderwright.app.document.DocNode.Entry;
import borderwright.app.document.DocNode.Fields;
import borderwright.app.document.DocNode.Items;
import borderwright.app.document.DocNode.Refused;
import borderwright.app.document.DocNode.Scalar;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.measure.Length;
import borderwright.engine.spelling.NearestName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * From a tree to records. It always gives a record: where a value is faulty a blank one stands in, and {@link
 * #isDoubtful} knows the place.
 */
final class Binder {
    private final DocumentFaults faults;
    private final ValueReader values;
    private final Map<String, Place> places = new HashMap<>();
    private final Set<String> doubtful = new HashSet<>();

    Binder(DocumentFaults faults) {
        this.faults = faults;
        this.values = new ValueReader(faults);
    }

    /** The record that {@code fields} describes; {@code path} is its place in the garden, not in the document. */
    Object bind(RecordShape shape, Fields fields, String path) {
        places.put(path, fields.place());
        reportUnknownKeys(shape, fields, path);
        Object[] bound = new Object[shape.fields().size()];
        for (int i = 0; i < bound.length; i++) {
            FieldShape field = shape.fields().get(i);
            bound[i] = field(field, fields, Place.join(path, field.key()));
        }
        try {
            return shape.make(bound);
        } catch (IllegalArgumentException e) {
            faults.add(fields.place(), "group", "These values do not go together: " + e.getMessage() + ".", "");
            doubtful.add(path);
            return Blank.record(shape);
        }
    }

    /** Where that part of the garden stands in the document: the part itself, or the nearest that holds it. */
    Place place(String path) {
        String at = path;
        while (!places.containsKey(at) && !at.isEmpty()) {
            at = holder(at);
        }
        return places.getOrDefault(at, Place.START);
    }

    /** Whether a fault was found at that path or in what holds it: what follows from it is doubtful. */
    boolean isDoubtful(String path) {
        for (String at = path; !at.isEmpty(); at = holder(at)) {
            if (doubtful.contains(at)) {
                return true;
            }
        }
        return false;
    }

    private static String holder(String path) {
        return path.substring(0, Math.max(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['))));
    }

    private void reportUnknownKeys(RecordShape shape, Fields fields, String path) {
        List<String> known = shape.keys();
        for (Entry entry : fields.entries()) {
            if (!known.contains(entry.key())) {
                reportUnknownKey(entry, path.isEmpty() ? withVariants(known) : known);
                RenamedKeys.now(entry.key(), known)
                        .or(() -> NearestName.of(entry.key(), known))
                        .filter(meant -> fields.entry(meant).isEmpty())
                        .ifPresent(meant -> doubtful.add(Place.join(path, meant)));
            }
        }
    }

    private static List<String> withVariants(List<String> known) {
        List<String> all = new ArrayList<>(known);
        all.add(GardenReader.VARIANTS);
        return all;
    }

    private void reportUnknownKey(Entry entry, List<String> known) {
        if (faults.isFull()) {
            return;
        }
        boolean decimals = entry.key().matches("\\d.*") && entry.value() instanceof Scalar scalar && scalar.isNothing();
        String perhaps = decimals
                ? "A comma in brackets parts items: write decimals with a point."
                : RenamedKeys.now(entry.key(), known)
                        .map(now -> "It is called `" + now + "` now.")
                        .orElseGet(() -> DocumentFaults.perhaps(entry.key(), known).strip());
        faults.add(
                entry.keyPlace(),
                "key-unknown",
                DocumentFaults.quoted(entry.key()) + " is not a key of this group.",
                perhaps.isEmpty() ? "Its keys are " + String.join(", ", known) + "." : perhaps);
    }

    private @Nullable Object field(FieldShape field, Fields fields, String path) {
        Optional<DocNode> node = fields.value(field.key());
        if (node.isEmpty() || (node.get() instanceof Scalar scalar && scalar.isNothing())) {
            if (doubtful.contains(path)) {
                // said under a misspelt key
                return Blank.ofSaid(field);
            }
            if (!field.optional()) {
                reportMissing(field, fields, node, path);
            }
            return Blank.of(field);
        }
        places.put(path, node.get().place());
        if (field.isList()) {
            return list(field, node.get(), path);
        }
        Optional<?> one = one(field, node.get(), path);
        return one.isPresent() ? one.get() : Blank.ofSaid(field);
    }

    private void reportMissing(FieldShape field, Fields fields, Optional<DocNode> empty, String path) {
        Place group = empty.map(DocNode::place)
                .or(() -> fields.removed(field.key()).map(Entry::keyPlace))
                .orElseGet(() -> fields.place()
                        .child(fields.place().line(), fields.place().column(), field.key()));
        faults.add(
                group,
                "key-missing",
                "`" + field.key() + "` is " + (empty.isPresent() ? "empty." : "missing."),
                "Write `" + field.key() + ": " + (field.example().isEmpty() ? "..." : field.example()) + "`: "
                        + field.says().value() + ".");
        doubtful.add(path);
    }

    private List<Object> list(FieldShape field, DocNode node, String path) {
        if (!(node instanceof Items list)) {
            if (!(node instanceof Refused)) {
                faults.add(
                        node.place(),
                        "kind",
                        describe(node) + " stands where a list belongs.",
                        "Begin each item with `- ` on a line of its own, or write them in brackets: `[..., ...]`.");
            }
            doubtful.add(path);
            return List.of();
        }
        List<Object> bound = new ArrayList<>();
        for (DocNode item : list.items()) {
            String itemPath = path + "[" + bound.size() + "]";
            places.put(itemPath, item.place());
            Optional<?> one = one(field, item, itemPath);
            bound.add(one.isPresent() ? one.get() : Blank.ofOne(field));
        }
        return bound;
    }

    private Optional<?> one(FieldShape field, DocNode node, String path) {
        Optional<?> value = switch (field.kind()) {
            case RECORD -> group(node, field).map(f -> bind(RecordShape.of(field.type()), f, path));
            case MEASURE -> group(node, field).flatMap(f -> measure(f, path));
            case LENGTH_RANGE -> range(field, node);
            case NAMES -> names(field, node);
            default -> scalar(field, node).flatMap(s -> values.read(field, s));
        };
        if (value.isEmpty()) {
            doubtful.add(path);
        }
        return value;
    }

    private Optional<Fields> group(DocNode node, FieldShape field) {
        if (node instanceof Fields fields) {
            return Optional.of(fields);
        }
        return node instanceof Refused
                ? Optional.empty()
                : values.wrongKind(field, node, describe(node) + " stands here.");
    }

    private Optional<Scalar> scalar(FieldShape field, DocNode node) {
        if (node instanceof Scalar scalar) {
            return Optional.of(scalar);
        }
        return node instanceof Refused
                ? Optional.empty()
                : values.wrongKind(field, node, describe(node) + " stands here.");
    }

    private Optional<?> names(FieldShape field, DocNode node) {
        if (!(node instanceof Items list)) {
            return scalar(field, node).flatMap(s -> values.read(field, s));
        }
        List<String> names = new ArrayList<>();
        for (DocNode item : list.items()) {
            Optional<Scalar> name = scalar(field, item);
            if (name.isEmpty()) {
                return Optional.empty();
            }
            names.add(name.get().text());
        }
        return values.names(field, node, names);
    }

    private Optional<LengthRange> range(FieldShape field, DocNode node) {
        if (!(node instanceof Fields fields)) {
            return scalar(field, node).flatMap(s -> values.read(field, s)).map(l -> LengthRange.of((Length) l));
        }
        List<String> known = List.of("from", "to");
        fields.entries().stream().filter(e -> !known.contains(e.key())).forEach(e -> reportUnknownKey(e, known));
        Optional<Length> from = bound(field, fields, "from");
        Optional<Length> to = bound(field, fields, "to");
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (to.get().compareTo(from.get()) < 0) {
            faults.add(
                    fields.place(),
                    "range",
                    "This range runs from the greater length to the smaller.",
                    "Write the smaller one as `from`.");
            return Optional.empty();
        }
        return Optional.of(new LengthRange(from.get(), to.get()));
    }

    private Optional<Length> bound(FieldShape field, Fields range, String key) {
        Optional<DocNode> node = range.value(key);
        if (node.isEmpty()) {
            faults.add(
                    range.place(),
                    "key-missing",
                    "`" + key + "` is missing in this range.",
                    "Write `{from: 1.2 m, to: 2.4 m}`, or one length.");
            return Optional.empty();
        }
        return scalar(field, node.get()).flatMap(s -> values.read(field, s)).map(Length.class::cast);
    }

    private Optional<?> measure(Fields fields, String path) {
        Map<String, RecordShape> kinds = RecordShape.measures();
        List<Entry> telling = fields.entries().stream()
                .filter(e -> kinds.containsKey(e.key()))
                .toList();
        if (telling.size() == 1) {
            RecordShape shape = kinds.get(telling.get(0).key());
            return shape == null ? Optional.empty() : Optional.of(bind(shape, fields, path));
        }
        List<String> keys = List.copyOf(kinds.keySet());
        if (telling.isEmpty()) {
            String perhaps = fields.entries().stream()
                    .map(e -> DocumentFaults.perhaps(e.key(), keys))
                    .filter(p -> !p.isEmpty())
                    .findFirst()
                    .orElse("");
            faults.add(
                    fields.place(),
                    "measure",
                    "This measure does not say what was measured.",
                    "Begin it with " + FieldShape.oneOf(keys) + "." + perhaps);
        } else {
            faults.add(
                    telling.get(1).keyPlace(),
                    "measure",
                    "`" + telling.get(0).key() + "` and `" + telling.get(1).key() + "` stand in one measure.",
                    "Write two measures.");
        }
        return Optional.empty();
    }

    private static String describe(DocNode node) {
        if (node instanceof Scalar scalar) {
            return scalar.isNothing() ? "Nothing" : DocumentFaults.quoted(scalar.text());
        }
        return node instanceof Items ? "A list" : "A group of keys";
    }
}
