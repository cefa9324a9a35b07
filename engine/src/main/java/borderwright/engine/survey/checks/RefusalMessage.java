package borderwright.engine.survey.checks;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.small;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Why measures do not fix a border. */
enum RefusalMessage implements MessageCode {
    NOTHING_MEASURED(count("corners"), count("lengths")),
    /** {@code kind} is {@code corner} or {@code point}; each of {@code tapes} is a {@link #TAPE_BETWEEN}. */
    NOT_FIXED(text("kind"), list("points"), count("number"), list("tapes")),
    NOT_FIXED_IN_SIZE(text("kind"), list("points"), count("number"), list("tapes")),
    TAPE_BETWEEN(text("from"), text("to")),
    NO_SHAPE,
    GOES_ROUND_THE_OTHER_WAY,
    EDGES_CROSS(text("one"), text("other")),
    TWO_SHAPES(text("from"), text("to"), length("first"), length("second")),
    TWO_SHAPES_BY_A_BEND(text("corner")),
    WEAKLY_FIXED(text("corner"), length("movement"), text("from"), text("to"), small("held")),
    /** Its movement is as long as the border. */
    WEAKLY_FIXED_BY_FAR(text("corner"), text("from"), text("to"), small("held")),
    WEAKLY_FIXED_WITHOUT_TAPE(text("corner")),
    TRIANGLE_DOES_NOT_CLOSE(text("one"), text("other"), length("together"), text("longest"), length("length"));

    private final List<Slot> slots;

    RefusalMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
