package borderwright.engine.strength.bracing;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** How else a box can be built. */
public enum CureMessage implements MessageCode {
    /** The requested box, braced. */
    BRACING(text("walls"), count("ties"), piece("below"), count("braces")),
    /** A box with something else changed as well. */
    CHANGED_BOX(commas("changes"), text("walls"), count("ties"), piece("below"), count("braces")),
    FLOOR(piece("height")),
    FOOTINGS(piece("depth")),
    LAPPED_CORNERS,
    UPRIGHTS(text("section"));

    private static final String CODE = "cure-";

    private final List<Slot> slots;

    CureMessage(Slot... slots) {
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
