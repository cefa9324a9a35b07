package borderwright.engine.ground;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What lies near planters by name, what a clearance is measured from, and what it is measured to. */
enum ClearanceMessage implements MessageCode {
    /** Without an article, as on a drawing. */
    NEARBY_KIND(choice("kind")),
    /** On a drawing, with its roots. */
    NEARBY_TREE(length("roots")),
    NEARBY_AT_EDGE(choice("kind"), text("edge")),
    NEARBY_ALONG_EDGE(message("place"), length("along")),
    CLEARANCE_OF_WALL,
    CLEARANCE_OF_WALL_IN_FRONT,
    /** The whole wall stands below an opening. */
    CLEARANCE_OF_WALL_BELOW,
    CLEARANCE_OF_SOIL_BELOW,
    CLEARANCE_OF_AIR,
    CLEARANCE_OF_DUG_GROUND,
    CLEARANCE_OF_POST_HOLES,
    CLEARANCE_OF_SOIL_ON_ROOTS,
    CLEARANCE_OF_GROUND_OVER,
    CLEARANCE_OF_PEGS_AND_PINS,
    CLEARANCE_OF_FEET,
    CLEARANCE_OF_FALL(length("over")),
    CLEARANCE_OF_UNKNOWN_FALL,
    CLEARANCE_FROM_EDGE(choice("kind"), text("edge")),
    CLEARANCE_FROM_DAMP_COURSE(text("edge")),
    CLEARANCE_FROM_WATER_BELOW,
    CLEARANCE_FROM_STANDING_WATER;

    private final List<Slot> slots;

    ClearanceMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
