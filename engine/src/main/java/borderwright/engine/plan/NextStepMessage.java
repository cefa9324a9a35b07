package borderwright.engine.plan;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the person does next. */
public enum NextStepMessage implements MessageCode {
    SETTLE_SURVEY(message("separating")),
    CHANGE_PLAN(count("points")),
    ORDER(count("suppliers")),
    SET_OUT,
    CUT_ON(count("pieces")),
    READ_ON;

    private final List<Slot> slots;

    NextStepMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
