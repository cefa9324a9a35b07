package borderwright.engine.survey.checks;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What is compared in a closing error. */
public enum ClosingMessage implements MessageCode {
    CLOSING_REPEATED(text("line"), count("times")),
    CLOSING_CHAIN(text("line"), count("lengths")),
    CLOSING_ANGLE(text("line"), text("corner")),
    CLOSING_WALK_ROUND,
    CLOSING_BRACED(text("line")),
    CLOSING_LEVELS(message("reading")),
    CLOSING_TWO_LEVELS(message("reading"), message("other")),
    CLOSING_BEST_CHECKED(message("reading"));

    private final List<Slot> slots;

    ClosingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
