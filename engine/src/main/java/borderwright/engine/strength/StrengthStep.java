package borderwright.engine.strength;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the figures of a worked check of a box are. */
public enum StrengthStep implements MessageCode {
    COMPACTED_GRAVEL,
    PERSON_ON_WALL,
    SPREAD_WIDTH,
    WALL_WEIGHT,
    STRAP_FORCE,
    FLOOR_LOAD,
    WIDEST_SPAN;

    private static final String CODE = "strength-";

    private final List<Slot> slots;

    StrengthStep(Slot... slots) {
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
