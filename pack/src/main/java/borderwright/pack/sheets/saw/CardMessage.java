package borderwright.pack.sheets.saw;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.semicolons;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** How a saw is set and the board lies, or a cut is made by hand. */
enum CardMessage implements MessageCode {
    /** {@code stop} is yes or no. */
    CARDS_INTRO(text("stop"), text("hand"), semicolons("kerfs")),
    SAW_KERF(text("saw"), piece("kerf")),
    CARD_TITLE(count("number"), text("saw")),
    CARD_PIECES(count("many")),
    TICK_AS_YOU_CUT,
    SAW_SQUARE,
    SAW_TILTED(choice("kind"), angle("tilt"), choice("lean")),
    SAW_TURNED(choice("kind"), angle("turn"), choice("lean")),
    FACE_UP(choice("face")),
    CUT_FOR(choice("cut")),
    /** {@code point} is top, bottom, far, near or all. */
    STOP_TO(text("point")),
    MARK_TO(text("point")),
    NEW_END_AT(text("point")),
    HAND_SQUARE,
    HAND_BEVEL(angle("tilt"), choice("lean")),
    HAND_MITRE(angle("turn"), choice("lean"));

    private final List<Slot> slots;

    CardMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
