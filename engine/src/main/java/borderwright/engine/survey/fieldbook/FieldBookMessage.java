package borderwright.engine.survey.fieldbook;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.degrees;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Faults of survey notes that keep them from becoming a network. */
enum FieldBookMessage implements MessageCode {
    TOO_FEW_CORNERS(count("named")),
    TOO_FEW_CORNERS_OF_A_STRIP(count("named")),
    CORNER_NAMED_TWICE(text("corner")),
    NO_SUCH_EDGE(text("edge"), commas("edges")),
    POINTS_OF_TAPE_DO_NOT_FIT(text("points")),
    POINTS_OF_ANGLE_DO_NOT_FIT(text("points")),
    POINTS_OF_BASELINE_DO_NOT_FIT(text("points")),
    POINTS_OF_RISE_DO_NOT_FIT(text("points")),
    POINTS_OF_CHAIN_DO_NOT_FIT(text("points")),
    POINT_ON_ITS_OWN_BASELINE(text("point")),
    LENGTHS_DO_NOT_FIT(text("chain"), count("points"), count("lengths"), count("needed")),
    LENGTH_NOT_POSITIVE(length("length")),
    REFLEX_ANGLE_NOT_AT_CORNERS(degrees("angle"), degrees("smaller")),
    WRONG_INSTRUMENT_FOR_A_LENGTH(text("instrument")),
    WRONG_INSTRUMENT_FOR_AN_ANGLE(text("instrument")),
    SLOPE_NOT_LEVELLED(text("from"), text("to")),
    HEIGHT_NOT_FIXED(list("points"), count("number"), text("from"), text("to"));

    private final List<Slot> slots;

    FieldBookMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
