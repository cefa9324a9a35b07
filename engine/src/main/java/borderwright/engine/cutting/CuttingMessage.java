package borderwright.engine.cutting;

import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a cutting plan cannot do. */
enum CuttingMessage implements MessageCode {
    PIECE_NOT_CUT(text("piece"), text("section"), piece("length"));

    private final List<Slot> slots;

    CuttingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
