package borderwright.app.document;

import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;

/** How a value is written in the document. */
enum FieldKind {
    TEXT("text", "a text", "larch"),
    NAMES("names", "names of points, a space between them", "A B C"),
    LENGTH("length", "a length with its unit", "600 mm"),
    LENGTH_RANGE("length or range", "a length with its unit, or `{from: 1.2 m, to: 2.4 m}`", "600 mm"),
    ANGLE("angle", "an angle with its unit", "127 deg"),
    DECIMAL("number", "a number without a unit or a currency sign", "9.60"),
    NUMBER("number", "a number without a unit", "15"),
    WHOLE("whole number", "a whole number", "8"),
    YES_NO("yes or no", "`yes` or `no`", "yes"),
    DATE("date", "a date as year-month-day", "2026-03-02"),
    CHOICE("one of", "one of its choices", ""),
    MEASURE("measure", "a measure", "{tape: A B, reads: 9.605 m}"),
    RECORD("group", "a group of keys", "");

    private static final Map<Class<?>, FieldKind> BY_TYPE = Map.of(
            String.class, TEXT,
            Names.class, NAMES,
            Length.class, LENGTH,
            LengthRange.class, LENGTH_RANGE,
            Angle.class, ANGLE,
            BigDecimal.class, DECIMAL,
            Double.class, NUMBER,
            Integer.class, WHOLE,
            Boolean.class, YES_NO,
            LocalDate.class, DATE);

    private final String word;
    private final String phrase;
    private final String example;

    FieldKind(String word, String phrase, String example) {
        this.word = word;
        this.phrase = phrase;
        this.example = example;
    }

    static FieldKind of(Class<?> type) {
        FieldKind known = BY_TYPE.get(type);
        if (known != null) {
            return known;
        }
        if (type.isEnum()) {
            return CHOICE;
        }
        if (type == GivenMeasure.class) {
            return MEASURE;
        }
        if (type.isRecord()) {
            return RECORD;
        }
        throw new IllegalArgumentException(
                "a garden record holds a " + type.getName() + ", which the reader cannot bind");
    }

    /** For the table of fields. */
    String word() {
        return word;
    }

    /** For a sentence, after "Write". */
    String phrase() {
        return phrase;
    }

    String example() {
        return example;
    }
}
