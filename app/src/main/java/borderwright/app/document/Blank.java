package borderwright.app.document;

import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Stands in for a required value that was faulty or missing, so that the faults that span records are found in the same
 * reading. A garden with a blank in it never leaves this package.
 */
final class Blank {
    private Blank() {}

    /** What stands in for the field's value; null where the record allows it. */
    static @Nullable Object of(FieldShape field) {
        if (field.isList()) {
            return List.of();
        }
        return field.optional() ? null : ofOne(field);
    }

    /** What stands in for a value that was given but cannot be read: it counts as given. */
    static Object ofSaid(FieldShape field) {
        return field.isList() ? List.of() : ofOne(field);
    }

    /** What stands in for one item of the field's list, or for its required value. */
    static Object ofOne(FieldShape field) {
        return switch (field.kind()) {
            case TEXT -> "";
            case NAMES -> Names.of();
            case LENGTH -> Length.ZERO;
            case LENGTH_RANGE -> LengthRange.of(Length.ZERO);
            case ANGLE -> new Angle(0);
            case DECIMAL -> BigDecimal.ZERO;
            case NUMBER -> 0.0;
            case WHOLE -> 0;
            case YES_NO -> false;
            case DATE -> LocalDate.EPOCH;
            case CHOICE -> field.type().getEnumConstants()[0];
            case MEASURE -> new GivenMeasure.GivenLevelReading("", Length.ZERO, null, null);
            case RECORD -> record(RecordShape.of(field.type()));
        };
    }

    static Object record(RecordShape shape) {
        return shape.make(shape.fields().stream().map(Blank::of).toArray());
    }
}
