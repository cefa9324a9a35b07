package borderwright.app.start;

import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the command {@code start} answers. */
enum StartMessage implements MessageCode {
    START_KIND_UNKNOWN(text("kind"), list("kinds")),
    START_KIND_MISSPELT(text("kind"), text("nearest"), list("kinds")),
    START_FILE_EXISTS(text("path")),
    START_WRITTEN(text("path"), text("kind"));

    private final List<Slot> slots;

    StartMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
