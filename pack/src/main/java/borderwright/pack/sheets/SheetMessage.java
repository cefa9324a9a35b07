package borderwright.pack.sheets;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.volume;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Short texts of the sheets: how a piece lies on its board, how its ends are cut, what stands on a label. */
enum SheetMessage implements MessageCode {
    CUT_FACE_DOWN,
    CUT_END_FOR_END,
    /** {@code point} is top, bottom, far or near. */
    CUT_STARTS_ON(text("point")),
    CUT_AT(piece("start")),
    CUT_CARD(count("right")),
    CUT_CARDS(count("left"), count("right")),
    TOOLS_TO_BUILD(text("brush"), text("stapler"), text("planks")),
    CUTTING_INTRO(text("waiting")),
    END_SQUARE,
    /** {@code point} is where the long point lies. */
    END_BEVELLED(angle("tilt"), message("point"), length("back")),
    END_MITRED(angle("turn"), message("point"), length("back")),
    PIECE_RIPPED(message("how")),
    PIECE_NOTCHED(piece("width"), piece("depth"), piece("from"), message("edge")),
    PIECE_ON_GROUND,
    GOODS_PIECES(count("many")),
    GOODS_ROLLS(count("many")),
    BUY_BOARDS(count("many")),
    BUY_PACKS(count("many"), text("each")),
    BUY_TINS(count("many"), text("each"), text("unit")),
    BUY_ROLLS(count("many"), text("each")),
    BUY_BAGS(count("many"), text("each")),
    BUY_LOADS(count("many"), text("each")),
    WOOD_TREATMENT(text("treatment")),
    TERMS_TAX_INCLUDED,
    TERMS_TAX_ADDED,
    TERMS_QUOTED(text("day")),
    LABEL_SOIL(length("depth"), volume("soil")),
    LABEL_BOX(text("box")),
    LABEL_BOARD(text("number")),
    LABEL_STACK(count("boards")),
    LABEL_STACK_NUMBERS(text("numbers")),
    STRENGTH_OF_BOX(text("box")),
    STRENGTH_OF_WEAKEST(text("box"), count("boxes"));

    private final List<Slot> slots;

    SheetMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
