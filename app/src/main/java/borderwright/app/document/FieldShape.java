package borderwright.app.document;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.message.Message;
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
    /** A range as it is written in the document. */
    static final String RANGE = "{from: 1.2 m, to: 2.4 m}";

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

    /** What to write here, such as {@code Write a length with its unit, such as `600 mm`.} */
    Message whatToWrite() {
        String one = isList ? kind.example() : example();
        return switch (kind) {
            case TEXT -> ValueMessage.WRITE_TEXT.of(one);
            case NAMES -> ValueMessage.WRITE_NAMES.of(one);
            case LENGTH -> ValueMessage.WRITE_LENGTH.of(one);
            case LENGTH_RANGE -> ValueMessage.WRITE_LENGTH_OR_RANGE.of(RANGE, one);
            case ANGLE -> ValueMessage.WRITE_ANGLE.of(one);
            case DECIMAL -> ValueMessage.WRITE_AMOUNT.of(one);
            case NUMBER -> ValueMessage.WRITE_NUMBER.of(one);
            case WHOLE -> ValueMessage.WRITE_WHOLE_NUMBER.of(one);
            case YES_NO -> ValueMessage.WRITE_YES_OR_NO.of();
            case DATE -> ValueMessage.WRITE_DATE.of(one);
            case MEASURE -> ValueMessage.WRITE_MEASURE.of(one);
            case RECORD -> ValueMessage.WRITE_GROUP.of(RecordShape.of(type).keys());
            case CHOICE -> oneOf(choices());
        };
    }

    private static Message oneOf(List<String> words) {
        return switch (words.size()) {
            case 1 -> ValueMessage.WRITE_CHOICE.of(words.get(0));
            case 2 -> ValueMessage.WRITE_EITHER.of(words.get(0), words.get(1));
            default -> ValueMessage.WRITE_ONE_OF.of(inBackquotes(words));
        };
    }

    static List<String> inBackquotes(List<String> words) {
        return words.stream().map(word -> "`" + word + "`").toList();
    }
}
