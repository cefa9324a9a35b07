package borderwright.engine.reading;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.further;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What is wrong with a text that should be a length or an angle; {@code example} is one of the two examples. */
enum MeasureTextMessage implements MessageCode {
    LENGTH_EXAMPLE,
    ANGLE_EXAMPLE,
    MEASURE_TEXT_TOO_LONG(count("characters"), message("example")),
    MEASURE_NOT_UNDERSTOOD(text("text"), message("example")),
    MEASURE_WITHOUT_UNIT(text("text"), message("example")),
    MEASURE_DIGITS_TOO_MANY(text("text"), message("example")),
    MEASURE_DIVIDES_BY_ZERO(text("text"), message("example")),
    MEASURE_SEPARATORS_TOO_MANY(text("text")),
    /** {@code whole} and {@code decimal} are the two ways of writing it that can be told apart. */
    MEASURE_COMMA_UNCLEAR(text("text"), text("whole"), text("decimal")),
    LENGTH_UNIT_UNKNOWN(text("text"), text("unit"), further("perhaps")),
    LENGTH_UNITS_DO_NOT_ADD(text("text"), message("example")),
    LENGTH_PART_TOO_LARGE(text("text"), message("example")),
    LENGTH_FRACTION_TOO_EARLY(text("text"), message("example")),
    LENGTH_TOO_LONG(text("text")),
    LENGTH_FOOT_MARK_MISSING(text("text")),
    ANGLE_WITHOUT_DEGREES(text("text"), message("example"), further("perhaps")),
    ANGLE_UNIT_TOO_SHORT(text("text")),
    ANGLE_OVER_FULL_TURN(text("text"), message("example"));

    private final List<Slot> slots;

    MeasureTextMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
