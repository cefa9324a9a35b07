package borderwright.engine.plan;

import static borderwright.engine.message.Slot.money;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Why nothing is planned, and what a whole plan cannot meet. */
public enum ShortfallMessage implements MessageCode {
    NOTHING_TO_BUILD,
    /** No board is kept whole until the end. */
    NO_BOARD_KEPT_WHOLE,
    OVER_BUDGET(money("cost"), money("over"), money("budget"));

    private final List<Slot> slots;

    ShortfallMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
