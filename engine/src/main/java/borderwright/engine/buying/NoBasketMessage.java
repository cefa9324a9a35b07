package borderwright.engine.buying;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.small;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Why there is no basket. Lists without names of sections or pieces give an empty name and the count 0 of names. */
public enum NoBasketMessage implements MessageCode {
    PIECE_WITHOUT_BOARDS(text("piece"), count("pieces"), text("section"), count("sections"), piece("length")),
    PIECE_TOO_LONG(
            text("piece"),
            count("pieces"),
            text("section"),
            count("sections"),
            piece("length"),
            piece("longest"),
            small("short")),
    TOO_FEW_BOARDS(commas("names"), count("sections")),
    SEARCH_STOPPED;

    private final List<Slot> slots;

    NoBasketMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
