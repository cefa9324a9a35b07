package borderwright.engine.garden.checks;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Names that are unknown or stand twice; {@code kind} is what they name, such as {@code section}. */
enum NameMessage implements MessageCode {
    NAME_UNKNOWN(text("kind"), text("name"), message("known")),
    NAME_TWICE(text("kind"), text("name")),
    NAMES_NONE(text("kind")),
    NAMES_ONLY(text("name")),
    NAMES_SEVERAL(commas("names")),
    NAMES_AND_MORE(commas("names"), count("more")),
    CORNER_UNKNOWN(text("corner"), message("known")),
    CORNERS_ARE(text("corners")),
    EDGE_OF_CORNERS(count("names")),
    /** {@code shape} is {@code ring} or {@code strip}. */
    EDGE_UNKNOWN(text("from"), text("to"), text("corners"), text("shape"));

    private final List<Slot> slots;

    NameMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
