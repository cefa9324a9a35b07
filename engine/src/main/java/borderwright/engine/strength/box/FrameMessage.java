package borderwright.engine.strength.box;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the model of a box leaves loose. */
public enum FrameMessage implements MessageCode {
    CAPPING_NOT_COUNTED,
    END_WITHOUT_UPRIGHT(text("piece")),
    JOINT_WITHOUT_SCREWS(text("fixed"), text("receiver")),
    STRAP_WITHOUT_SCREWS(count("corner"));

    private final List<Slot> slots;

    FrameMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
