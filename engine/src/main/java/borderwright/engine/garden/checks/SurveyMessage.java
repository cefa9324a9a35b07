package borderwright.engine.garden.checks;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What does not fit together in a survey; {@code measure} is its key. */
enum SurveyMessage implements MessageCode {
    RING_CORNERS_TOO_FEW(count("corners")),
    STRIP_CORNERS_TOO_FEW(count("corners")),
    CORNER_TWICE(text("corner")),
    EDGE_TWICE(text("edge")),
    POINTS_COUNT(text("measure"), count("needed"), count("names")),
    POINT_TWICE(text("measure"), text("point")),
    OFFSET_FROM_ITSELF(text("point")),
    CHAIN_OF_ONE_POINT,
    CHAIN_COUNT(count("points"), count("needed"), count("lengths")),
    CHAIN_LENGTH_NOT_POSITIVE,
    POINT_NOT_FIXED(text("point"), message("cure")),
    POINT_NEEDS_TWO_MEASURES;

    private final List<Slot> slots;

    SurveyMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
