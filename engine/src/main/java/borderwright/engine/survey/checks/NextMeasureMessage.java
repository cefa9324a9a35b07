package borderwright.engine.survey.checks;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.small;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Measures to take next, and what each would do. */
public enum NextMeasureMessage implements MessageCode {
    NEXT_TAPE(text("from"), text("to")),
    NEXT_SECOND_TAPE(text("from"), text("to")),
    NEXT_SECOND_TAPE_OF_ANY,
    NEXT_ANGLE(text("corner"), text("from"), text("to")),
    NEXT_RISE(text("from"), text("to")),
    NEXT_ONCE_MORE(message("reading")),

    NEXT_SHOWS_A_SLIP,
    NEXT_TELLS_WHETHER(message("reading")),
    NEXT_TELLS_WHICH(count("readings")),
    NEXT_CORRECTS,
    NEXT_CHECKS_ONE(message("reading")),
    NEXT_CHECKS_MANY(count("readings")),
    NEXT_SHOWS(message("slip"), message("reading"), choice("left")),
    NEXT_SHOWS_LESS(message("slip"), message("reading"), message("now"), choice("left")),
    NEXT_IMPROVES(small("from"), small("to")),
    NEXT_GUARDS(small("error"));

    private final List<Slot> slots;

    NextMeasureMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
