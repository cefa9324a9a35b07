package borderwright.app.document;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.decimal;
import static borderwright.engine.message.Slot.further;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Faults of one key or value, what to write for it, and its limits. {@code found} tells what stands there: nothing, text, list or group; {@code write} what would be right. */
enum ValueMessage implements MessageCode {
    KEY_UNKNOWN(text("key"), commas("keys")),
    KEY_RENAMED(text("key"), text("now")),
    KEY_MISSPELT(text("key"), text("meant")),
    KEY_OF_DECIMALS(text("key")),
    KEY_MISSING(text("key"), text("example"), text("meaning")),
    KEY_EMPTY(text("key"), text("example"), text("meaning")),
    GROUP_REFUSED(text("reason")),
    LIST_EXPECTED(text("found"), text("text")),
    WRONG_KIND(text("found"), text("text"), message("write")),
    RANGE_END_MISSING(text("end"), text("example")),
    RANGE_REVERSED,
    MEASURE_WITHOUT_KIND(commas("keys"), further("perhaps")),
    MEASURE_OF_TWO_KINDS(text("key"), text("other")),
    TEXT_EMPTY(message("write")),
    POINT_NAME(text("text"), message("write")),
    NUMBER_EXPECTED(text("text"), message("write")),
    NUMBER_IN_QUOTES(text("text")),
    NUMBER_TOO_LARGE(text("text"), decimal("most"), count("places")),
    WHOLE_NUMBER_EXPECTED(text("text"), message("write")),
    YES_OR_NO_EXPECTED(text("text"), further("perhaps")),
    DATE_EXPECTED(text("text"), message("write")),
    CHOICE_UNKNOWN(text("text"), message("write"), further("perhaps")),
    /** {@code kind} is length, angle or number. */
    VALUE_OUT_OF_RANGE(text("text"), text("kind"), message("limits")),
    VALUE_UNUSUAL(text("text"), message("limits"), message("perhaps")),
    PERHAPS_MEANT(text("meant")),
    PERHAPS_CHECK,
    DATE_FAR(text("text"), text("first"), text("last")),
    WRITE_TEXT(text("example")),
    WRITE_NAMES(text("example")),
    WRITE_LENGTH(text("example")),
    WRITE_LENGTH_OR_RANGE(text("range"), text("example")),
    WRITE_ANGLE(text("example")),
    WRITE_AMOUNT(text("example")),
    WRITE_NUMBER(text("example")),
    WRITE_WHOLE_NUMBER(text("example")),
    WRITE_YES_OR_NO,
    WRITE_DATE(text("example")),
    WRITE_MEASURE(text("example")),
    WRITE_GROUP(commas("keys")),
    WRITE_CHOICE(text("choice")),
    WRITE_EITHER(text("choice"), text("other")),
    WRITE_ONE_OF(commas("choices")),
    LIMITS_FROM_TO(message("least"), message("most")),
    LIMITS_AT_LEAST(message("least")),
    LIMITS_AT_MOST(message("most")),
    LIMIT_NUMBER(decimal("number")),
    LIMIT_LENGTH(decimal("mm")),
    LIMIT_LENGTH_IN_BOTH(decimal("mm"), text("inches")),
    LIMIT_ANGLE(decimal("degrees"));

    private final List<Slot> slots;

    ValueMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
