package borderwright.app.plan;

import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What {@code plan} is doing, besides the engine's steps. */
enum PlanProgressMessage implements MessageCode {
    PLANNING_VARIANT(text("name"), message("step")),
    COMPARING_DESIGNS,
    MAKING_SHEETS;

    private final List<Slot> slots;

    PlanProgressMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
