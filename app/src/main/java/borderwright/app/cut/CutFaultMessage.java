package borderwright.app.cut;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.decimal;
import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What is wrong with the files and options of {@code cut}. */
enum CutFaultMessage implements MessageCode {
    FILE_MISSING,
    FILE_EMPTY,
    FILE_NOT_UTF8,
    FILE_NOT_READ(text("reason")),
    CSV_LINE_NOT_READ(count("line")),
    COLUMN_MISSING(text("column")),
    COLUMN_TWICE(text("column")),
    LENGTH_COLUMN_MISSING,
    LENGTH_COLUMN_UNCLEAR(list("found")),
    DECIMAL_COMMAS(count("line")),

    COMMA_AND_POINT(text("column"), text("value")),
    /** {@code mark} is {@code comma} or {@code point}, that of the value. */
    DECIMAL_MARKS_DIFFER(text("column"), text("value"), text("mark"), count("line")),
    LENGTH_NOT_POSITIVE_NUMBER(text("value")),
    LENGTH_NOT_POSITIVE_INCHES(text("value")),
    COUNT_OUT_OF_RANGE(text("column"), text("value"), count("least"), count("most")),
    AMOUNT_OUT_OF_RANGE(text("column"), text("value")),
    SUPPLIER_TWICE(text("supplier")),
    COLLECTION_WITHOUT_COST,
    NOT_IN_FIRST_ROW(text("column"), text("supplier")),
    BANDS_NOT_RISING(decimal("value"), decimal("before")),
    DELIVERY_CHARGE_RISES(decimal("charge"), decimal("value"), decimal("below")),

    SUM_TOO_LARGE,
    OFFCUT_OPTIONS_APART,
    OFFCUT_LENGTH_NOT_POSITIVE(decimal("given")),
    OFFCUT_WORTH_NEGATIVE(decimal("given")),
    SECONDS_NOT_POSITIVE(text("given")),
    EFFORT_NEGATIVE(count("given")),
    SECONDS_AND_EFFORT,
    NOT_MILLIMETRES(text("given")),
    MORE_FAULTS(count("faults")),
    NOTHING_CUT(count("faults")),
    NOTHING_CUT_FOR_ROWS(count("faults")),
    ROW_DROPPED(text("fault"));

    private final List<Slot> slots;

    CutFaultMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
