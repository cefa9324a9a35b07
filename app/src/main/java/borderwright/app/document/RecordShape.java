package borderwright.app.document;

import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.vocabulary.Described;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * One group of keys: one of the garden's records.
 *
 * @param type the record
 * @param says what it means
 * @param fields its keys, in the order of the record
 * @param constructor makes one from a value for each field; looked up once, because a document can hold thousands
 */
record RecordShape(Class<?> type, String says, List<FieldShape> fields, Constructor<?> constructor) {
    private static final Map<Class<?>, RecordShape> KNOWN = new ConcurrentHashMap<>();

    static RecordShape of(Class<?> type) {
        return KNOWN.computeIfAbsent(type, RecordShape::walk);
    }

    private static RecordShape walk(Class<?> type) {
        Described says = type.getAnnotation(Described.class);
        if (!type.isRecord() || says == null) {
            throw new IllegalArgumentException(type + " is not a record that says what it means");
        }
        return new RecordShape(
                type,
                says.value(),
                Arrays.stream(type.getRecordComponents()).map(FieldShape::of).toList(),
                constructor(type));
    }

    /** Each kind of measure by the key that tells it: the first of its record. */
    static Map<String, RecordShape> measures() {
        Map<String, RecordShape> byKey = new LinkedHashMap<>();
        for (Class<?> kind : GivenMeasure.class.getPermittedSubclasses()) {
            RecordShape shape = of(kind);
            byKey.put(shape.fields.get(0).key(), shape);
        }
        return byKey;
    }

    List<String> keys() {
        return fields.stream().map(FieldShape::key).toList();
    }

    Optional<FieldShape> field(String key) {
        return fields.stream().filter(f -> f.key().equals(key)).findFirst();
    }

    /** Whether its items in a list are told apart by {@code name}. */
    boolean isNamed() {
        return field("name").isPresent();
    }

    /**
     * The record of these values.
     *
     * @throws IllegalArgumentException what the record's own constructor refuses
     */
    Object make(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException("cannot make a " + type.getSimpleName(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make a " + type.getSimpleName(), e);
        }
    }

    private static Constructor<?> constructor(Class<?> type) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("a record without its constructor: " + type, e);
        }
    }
}
