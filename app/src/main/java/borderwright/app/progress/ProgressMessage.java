package borderwright.app.progress;

import static borderwright.engine.message.Slot.message;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** How a step of work stands in a line of its own. */
enum ProgressMessage implements MessageCode {
    STEP_LINE(message("step"));

    private final List<Slot> slots;

    ProgressMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
