package borderwright.engine.ground;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.number;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a person should know of the ground, its water and the house beside it. */
enum GroundMessage implements MessageCode {
    DIG_INCLUDES_POST_HOLES(count("holes"), length("width"), length("depth")),
    NO_FLOOR_ON_HARD_GROUND,
    FLOOR_LEGS_WITHOUT_GRAVEL(choice("bed")),
    NO_LEVELS_TAKEN,
    /** Water runs towards the house. */
    RUN_OFF(text("box"), number("run", 0), text("edge")),
    RUN_OFF_SIDE(text("box"), number("run", 0), text("edge")),
    RUN_OFF_UNKNOWN,
    /** Soil stands too high beside the house. */
    DAMP_COURSE(
            text("box"),
            length("off"),
            choice("way"),
            text("edge"),
            length("gap"),
            length("least"),
            length("lower"),
            length("away")),
    DAMP_COURSE_UNKNOWN(commas("boxes"), length("near"), text("edge"), length("least"));

    private final List<Slot> slots;

    GroundMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
