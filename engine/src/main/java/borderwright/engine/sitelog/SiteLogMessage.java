package borderwright.engine.sitelog;

import static borderwright.engine.message.Slot.further;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Cuts reported from the site that do not fit the plan. */
enum SiteLogMessage implements MessageCode {
    /** The piece is of another section than the board. */
    CUT_SECTION(text("piece"), text("board"), text("section")),
    CUT_TWICE(text("piece")),
    CUT_UNKNOWN(text("piece"), further("perhaps"));

    private final List<Slot> slots;

    SiteLogMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
