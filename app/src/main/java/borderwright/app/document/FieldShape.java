package borderwright.app.document;

import borderwright.engine.garden.vocabulary.Described;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One key of a group: a component of one of the garden's records.
 *
 * @param key as written in the document, the component's name in lower-case words
 * @param kind how its value, or each value of its list, is written
 * @param type the value's type, or the list's items' type
 * @param isList whether it holds a list
 * @param optional whether it may be left out
 * @param says what it means and its limits
 */
record FieldShape(String key, FieldKind kind, Class<?> type, boolean isList, boolean optional, Described says) {

    static FieldShape of(RecordComponent component) {
        Described says = component.getAnnotation(Described.class);
        if (says == null) {
            throw new IllegalArgumentException(component + " does not say what it means");
        }
        boolean isList = component.getType() == List.class;
        Class<?> type = isList
                ? (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                : component.getType();
        boolean nullable = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        return new FieldShape(words(component.getName()), FieldKind.of(type), type, isList, isList || nullable, says);
    }

    /** {@code freeOver} is written {@code free over}. */
    private static String words(String componentName) {
        return componentName.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /** {@code ALONG_THE_GROUND} is written {@code along the ground}. */
    static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The words that may be written, of a {@link FieldKind#CHOICE}. */
    List<String> choices() {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> words((Enum<?>) constant))
                .toList();
    }

    String example() {
        return says.example().isEmpty() ? kind.example() : says.example();
    }

    /** {@code Write a length with its unit, such as `600 mm`.} */
    String whatToWrite() {
        if (kind == FieldKind.CHOICE) {
            return "Write " + oneOf(choices()) + ".";
        }
        String one = isList ? kind.example() : example();
        String such = one.isEmpty() || kind == FieldKind.YES_NO ? "" : ", such as `" + one + "`";
        return "Write " + kind.phrase() + such + ".";
    }

    /** {@code `a`}, {@code `a` or `b`}, {@code one of `a`, `b`, `c`}. */
    static String oneOf(List<String> words) {
        List<String> quoted = words.stream().map(w -> "`" + w + "`").toList();
        return quoted.size() <= 2 ? String.join(" or ", quoted) : "one of " + String.join(", ", quoted);
    }
}
