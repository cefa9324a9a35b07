package borderwright.engine.strength;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Which part is checked, and under what, where that is no load case of the frame. */
public enum PartMessage implements MessageCode {
    /** A part of a kind. */
    CHECKED(message("kind"), message("which")),
    PIECE(text("label")),
    SCREWS(text("fixed"), text("receiver"), text("screw")),
    CORNER(count("corner")),
    CORNER_SCREWS(count("corner"), count("screws"), text("screw")),
    SIDE(text("side")),
    UNDER_BOTTOM_COURSE,
    UNDER_GRAVEL,
    OWN_WEIGHT_AND_PERSON,
    SOAKED_AND_TRODDEN_FILL,
    GROUND_BEHIND(Slot.piece("height"));

    private static final String CODE = "checked-part-";

    private final List<Slot> slots;

    PartMessage(Slot... slots) {
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
