package borderwright.engine.buildup.parts;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What fixings hold. */
public enum FixingMessage implements MessageCode {
    WALLS_TO_UPRIGHTS(count("per")),
    UPRIGHTS_OF_A_CORNER(count("per")),
    STRAP_OVER_A_CORNER,
    STRAPS_TO_UPRIGHTS(count("per")),
    STRAPS_TO_BOARDS(count("per")),
    THROUGH_LAPS(count("per")),
    TIES_TO_BRACES(count("per")),
    BRACKETS_OF_TIES,
    DIVIDERS_TO_UPRIGHTS(count("per")),
    BEARERS_TO_LEGS,
    SLATS_TO_BEARERS,
    CAPPING_TO_WALLS(length("spacing")),
    CONCRETE_ROUND_UPRIGHTS;

    private final List<Slot> slots;

    FixingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
