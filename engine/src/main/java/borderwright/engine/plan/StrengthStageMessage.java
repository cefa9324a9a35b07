package borderwright.engine.plan;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the strength of all boxes comes to. */
enum StrengthStageMessage implements MessageCode {
    ONE_BOX_HOLDS(text("box"), message("figures")),
    ALL_BOXES_HOLD(count("boxes"), text("box"), message("figures")),
    ONE_BOX_FALLS_SHORT(text("box"), message("verdict"), message("reason"), count("more")),
    BOXES_FALL_SHORT(
            count("holding"), count("boxes"), text("box"), message("verdict"), message("reason"), count("more")),
    BOX_DOES_NOT_HOLD(text("box"), message("reason"), count("more"), message("advice"), text("friction")),
    BOX_NOT_SHOWN_TO_HOLD(text("box"), message("reason"), count("more")),
    LEAST_CURE(message("way")),
    /** Where the search was cut short, here and below. */
    LEAST_CURE_SO_FAR(message("way")),
    NO_BRACING_HOLDS,
    NO_BRACING_HOLDS_SO_FAR,
    NO_BRACING_HOLDS_GROUND,
    /** Uprights are cut from wall boards though a batten can be had. */
    BATTEN_NOT_NAMED(text("walls"), text("batten")),
    /** Uprights have to be cut from wall boards. */
    NO_BATTEN_ON_SALE(text("walls"), length("thickness"), length("width"));

    private final List<Slot> slots;

    StrengthStageMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
