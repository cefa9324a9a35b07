package borderwright.engine.strength.bracing;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the search for bracing says while it goes on. */
enum BracingMessage implements MessageCode {
    SEEKING_BRACING(text("box"), count("number"), count("boxes"), count("tried")),
    CHECKING_BOX(text("box"), count("number"), count("boxes"));

    private final List<Slot> slots;

    BracingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
