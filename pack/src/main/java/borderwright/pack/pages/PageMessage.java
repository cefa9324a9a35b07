package borderwright.pack.pages;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What stands on every page, and what the files are called. */
enum PageMessage implements MessageCode {
    FOOT_GUIDANCE,
    FOOT_INVENTED,
    FOOT_PAGE(text("page"), text("pages")),
    TITLE_OF_PACK,
    TITLE_OF_WORKING,
    TITLE_OF_LABELS;

    private final List<Slot> slots;

    PageMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
