package borderwright.engine.buildup.parts;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.weight;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** End cuts, where their long points lie, and how the saws at hand make them. */
public enum CutMessage implements MessageCode {
    SQUARE_CUT,
    /** {@code end} is left or right; {@code long} and {@code short} are faces or edges of this enum. */
    BEVELLED_END(angle("angle"), text("end"), message("long"), piece("back"), message("short")),
    MITRED_END(angle("angle"), text("end"), message("long"), piece("back"), message("short")),
    OUTSIDE_FACE,
    INSIDE_FACE,
    OUTER_EDGE,
    INNER_EDGE,
    MARKED_FACE,
    UNMARKED_FACE,
    LOWER_EDGE,
    UPPER_EDGE,
    NO_SAW_LISTED,
    SAW_SET_SQUARE(text("saw")),
    /** {@code scale} is the reading on a scale that shows a square cut as 90 degrees; {@code kind} is that of the saw. */
    SAW_BLADE_TILTED(text("saw"), choice("kind"), angle("set"), angle("scale")),
    SAW_FENCE_TURNED(text("saw"), choice("kind"), angle("set"), angle("scale")),
    CUT_BEYOND_TILT(angle("tilt"), text("saw"), angle("most"), angle("wedge")),
    CUT_BEYOND_TURN(angle("turn"), text("saw"), angle("most")),
    CUT_BEYOND_WIDTH(piece("width")),
    CUT_BEYOND_DEPTH(piece("depth")),
    PIECE_BELOW_SHORTEST(piece("length"), text("saw"), piece("shortest")),
    PIECE_BEYOND_LONGEST(piece("length"), text("saw"), piece("longest")),
    PIECE_BEYOND_HEAVIEST(weight("weight"), text("saw"), weight("heaviest"));

    private final List<Slot> slots;

    CutMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
