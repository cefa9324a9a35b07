package borderwright.engine.survey.shape;

import static borderwright.engine.message.Slot.count;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the search for the shape says while it goes on. */
enum ShapeMessage implements MessageCode {
    SETTLING_SHAPE(count("number"), count("points"));

    private final List<Slot> slots;

    ShapeMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
