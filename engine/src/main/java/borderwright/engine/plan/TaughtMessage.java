package borderwright.engine.plan;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.percent;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the first planter taught. */
enum TaughtMessage implements MessageCode {
    KERF_MEASURED(piece("kerf")),
    REJECTS_MEASURED(count("unusable"), count("boards"), percent("now", 1), percent("before", 1)),
    PREDICTION_STANDS(text("box"), piece("measured"), piece("predicted")),
    BULGES_MORE_THAN_PREDICTED(text("box"), piece("measured"), piece("predicted")),
    FIRST_PLANTER_BULGES(message("finding"), count("boxes"), text("first"), length("limit"));

    private final List<Slot> slots;

    TaughtMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
