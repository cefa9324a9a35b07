package borderwright.pack.figures;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What parts and edges are called. */
enum PartMessage implements MessageCode {
    PART_EDGE(choice("kind")),
    PART_ROLE(choice("role")),
    PART_ROLES(choice("role")),
    /** Where the long point of an end lies. */
    PART_LONG_POINT(choice("point"), choice("role")),
    PIECES_OF_COURSE(message("role"), text("course"));

    private final List<Slot> slots;

    PartMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
