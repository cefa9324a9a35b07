package borderwright.engine.spelling;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a person may have meant. */
enum SpellingMessage implements MessageCode {
    PERHAPS_YOU_MEANT(text("name"));

    private final List<Slot> slots;

    SpellingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
