package borderwright.engine.strength.soil;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the figures of a worked check of the ground are. */
public enum SoilStep implements MessageCode {
    PUSH_AT_SURFACE,
    MOMENT_AT_SURFACE,
    DEPTH,
    WIDTH_OF_CONCRETE,
    LATERAL_BEARING,
    BASE_PRESSURE,
    PRESUMPTIVE;

    private static final String CODE = "soil-";

    private final List<Slot> slots;

    SoilStep(Slot... slots) {
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
