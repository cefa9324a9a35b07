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
    TEXT("text", "larch"),
    NAMES("names", "A B C"),
    LENGTH("length", "600 mm"),
    LENGTH_RANGE("length or range", "600 mm"),
    ANGLE("angle", "127 deg"),
    DECIMAL("number", "9.60"),
    NUMBER("number", "15"),
    WHOLE("whole number", "8"),
    YES_NO("yes or no", "yes"),
    DATE("date", "2026-03-02"),
    CHOICE("one of", ""),
    MEASURE("measure", "{tape: A B, reads: 9.605 m}"),
    RECORD("group", "");

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
    private final String example;

    FieldKind(String word, String example) {
        this.word = word;
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

    String example() {
        return example;
    }
}
