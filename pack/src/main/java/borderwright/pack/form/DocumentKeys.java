package borderwright.pack.form;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How the garden document spells its keys and choices: lower-case words. */
final class DocumentKeys {
    private DocumentKeys() {}

    /** The key of a component of one of the document's records: {@code freeOver} is {@code free over}. */
    static String key(RecordComponent component) {
        return component.getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /** The component of a record with this key. */
    static RecordComponent component(Class<? extends Record> group, String key) {
        return Arrays.stream(group.getRecordComponents())
                .filter(component -> key(component).equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(group.getSimpleName() + " has no key " + key));
    }

    /** What may be written for a choice. */
    static List<String> choices(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant ->
                        ((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .toList();
    }
}
