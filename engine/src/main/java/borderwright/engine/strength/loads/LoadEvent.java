package borderwright.engine.strength.loads;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What happens in a load case. */
public enum LoadEvent implements MessageCode {
    /** The fill for good: moist and settled, in all planters. */
    LASTING_FILL,
    SOAKED_FILL,
    WATERLOGGED_FILL,
    FLOODED_FILL,
    TREADING,
    ODD_PLANTERS_FIRST,
    EVEN_PLANTERS_FIRST,
    PERSON_ON_EDGE(text("side")),
    GROUND_AGAINST_EMPTY_BOX;

    private static final String CODE = "load-";

    private final List<Slot> slots;

    LoadEvent(Slot... slots) {
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
