package borderwright.engine.survey.checks;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.number;

import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** That readings disagree, and which measure would show which of them is wrong. */
public enum DisagreementMessage implements MessageCode {
    /** What follows from the value that a measure reads; the readings by their numbers in the report. */
    SEPARATES_IN_TWO(message("measure"), message("first"), message("second")),
    SEPARATES_IN_THREE(message("measure"), message("first"), message("second"), message("third")),
    SEPARATES_BY_REPEATING(message("measure")),
    OUTCOME_OF_LENGTH(length("value"), count("number"), list("readings")),
    OUTCOME_OF_ANGLE(number("value", 1), count("number"), list("readings")),
    OUTCOME_RANGE(count("first"), count("last")),

    SURVEY_DISAGREES(message("reading"), message("read"), message("implied")),
    SURVEY_DISAGREES_BY_A_SLIP(message("reading"), message("read"), message("implied"), message("slip")),
    SURVEY_DISAGREES_SOMEWHERE(
            count("readings"), message("reading"), message("read"), message("implied"), message("separating")),
    SURVEY_DISAGREES_SOMEWHERE_BY_A_SLIP(
            count("readings"),
            message("reading"),
            message("read"),
            message("implied"),
            message("slip"),
            message("separating")),
    READ_LENGTH(length("length")),
    READ_ANGLE(angle("angle"));

    private final List<Slot> slots;

    DisagreementMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }

    /** A value in the unit of a reading, {@code mm} or {@code deg}, as it is read. */
    static Message value(double value, String unit) {
        return (unit.equals("mm") ? READ_LENGTH : READ_ANGLE).of(value);
    }
}
