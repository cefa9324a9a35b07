package borderwright.app.document;

import borderwright.app.document.DocNode.Entry;
import borderwright.app.document.DocNode.Fields;
import borderwright.app.document.DocNode.Items;
import borderwright.app.document.DocNode.Refused;
import borderwright.app.document.DocNode.Scalar;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
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
            faults.add(fields.place(), ValueMessage.GROUP_REFUSED.of(String.valueOf(e.getMessage())));
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
        String key = DocumentFaults.shortened(entry.key());
        faults.add(
                entry.keyPlace(),
                decimals
                        ? ValueMessage.KEY_OF_DECIMALS.of(key)
                        : RenamedKeys.now(entry.key(), known)
                                .map(now -> ValueMessage.KEY_RENAMED.of(key, now))
                                .or(() -> NearestName.of(entry.key(), known)
                                        .map(meant -> ValueMessage.KEY_MISSPELT.of(key, meant)))
                                .orElseGet(() -> ValueMessage.KEY_UNKNOWN.of(key, known)));
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
        String example = field.example().isEmpty() ? "..." : field.example();
        faults.add(
                group,
                (empty.isPresent() ? ValueMessage.KEY_EMPTY : ValueMessage.KEY_MISSING)
                        .of(field.key(), example, field.says().value()));
        doubtful.add(path);
    }

    private List<Object> list(FieldShape field, DocNode node, String path) {
        if (!(node instanceof Items list)) {
            if (!(node instanceof Refused)) {
                faults.add(node.place(), ValueMessage.LIST_EXPECTED.of(node.kind(), ValueReader.shortText(node)));
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
        return node instanceof Refused ? Optional.empty() : values.wrongKind(field, node);
    }

    private Optional<Scalar> scalar(FieldShape field, DocNode node) {
        if (node instanceof Scalar scalar) {
            return Optional.of(scalar);
        }
        return node instanceof Refused ? Optional.empty() : values.wrongKind(field, node);
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
            faults.add(fields.place(), ValueMessage.RANGE_REVERSED.of());
            return Optional.empty();
        }
        return Optional.of(new LengthRange(from.get(), to.get()));
    }

    private Optional<Length> bound(FieldShape field, Fields range, String key) {
        Optional<DocNode> node = range.value(key);
        if (node.isEmpty()) {
            faults.add(range.place(), ValueMessage.RANGE_END_MISSING.of(key, FieldShape.RANGE));
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
            Optional<Message> perhaps = fields.entries().stream()
                    .flatMap(e -> NearestName.perhaps(e.key(), keys).stream())
                    .findFirst();
            faults.add(fields.place(), ValueMessage.MEASURE_WITHOUT_KIND.of(FieldShape.inBackquotes(keys), perhaps));
        } else {
            faults.add(
                    telling.get(1).keyPlace(),
                    ValueMessage.MEASURE_OF_TWO_KINDS.of(
                            telling.get(0).key(), telling.get(1).key()));
        }
        return Optional.empty();
    }
}
