package borderwright.engine.settingout;

import static borderwright.engine.message.Slot.choice;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** How the corners of the boxes are set out. */
enum SettingOutMessage implements MessageCode {
    /** One corner's mark by name. */
    CORNER_MARK(choice("mark")),
    MARK_LIST(choice("mark")),
    SET_OUT_ROWS(choice("mark")),
    CROSS_TAPES(choice("mark")),
    CHECK_DIAGONALS(choice("next"));

    private final List<Slot> slots;

    SettingOutMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
