package borderwright.engine.plan;

import static borderwright.engine.message.Slot.choice;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a plan says of its stages while it is made. */
enum PlanStageMessage implements MessageCode {
    /** {@code stage} is a {@link PlanStage}. */
    STAGE_BEGINS(choice("stage"));

    private final List<Slot> slots;

    PlanStageMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
