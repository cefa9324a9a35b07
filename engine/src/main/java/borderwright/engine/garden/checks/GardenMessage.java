package borderwright.engine.garden.checks;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.further;
import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.unitWeight;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What does not fit together in the rest of the garden. */
enum GardenMessage implements MessageCode {
    CURRENCY_UNKNOWN(text("currency"), further("perhaps")),
    FIRST_PLANTER_UNUSABLE,
    SUBSTITUTE_OF_OTHER_SIZE(text("section"), text("other")),
    CUT_BOARD_COUNT(count("boards")),
    UNUSABLE_TOO_MANY(count("unusable"), count("boards")),
    TREE_WITHOUT_TRUNK,
    TREE_TRUNK_TWICE,
    LOWER_EDGE_MISSING,
    NEARBY_ENDS_FIRST,
    FOOTING_IN_HARD_GROUND,
    OVERLAP_TOO_WIDE,
    SOAKED_WEIGHT_TWICE(unitWeight("filling"), unitWeight("strength")),
    MOIST_HEAVIER_THAN_SOAKED(unitWeight("moist"), unitWeight("soaked"));

    private final List<Slot> slots;

    GardenMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
