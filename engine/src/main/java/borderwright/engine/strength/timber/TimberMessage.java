package borderwright.engine.strength.timber;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Which rules and which grade of timber the checks rest on. */
public enum TimberMessage implements MessageCode {
    STAMPED_GRADE(text("grade")),
    NO_GRADE_EN(text("taken")),
    UNKNOWN_GRADE_EN(text("stamped"), text("taken")),
    NO_GRADE_NDS(text("taken")),
    UNKNOWN_GRADE_NDS(text("stamped"), text("taken")),
    EUROCODE_5,
    NDS;

    private static final String CODE = "timber-";

    private final List<Slot> slots;

    TimberMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }

    @Override
    public String key() {
        return CODE + MessageCode.super.key();
    }
}
