package borderwright.pack.figures;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.number;
import static borderwright.engine.message.Slot.percent;
import static borderwright.engine.message.Slot.small;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Results of a plan: its survey, and its designs side by side. */
enum ResultMessage implements MessageCode {
    READINGS_UNCHECKED(message("next")),
    READINGS_NOT_CHECKED(message("reading"), message("next")),
    READINGS_SHOWN(small("moves")),
    READINGS_NOT_SHOWN(
            message("slip"), message("reading"), text("corner"), small("moves"), length("room"), message("next")),
    READINGS_DISAGREE,
    CORNER_MOVES(text("corner"), small("moves")),
    CORNER_MOVES_FREELY(text("corner")),
    READINGS_TEST(number("figure", 2), number("limit", 2), percent("risk", 1), count("spare")),
    DESIGN_COSTS_LESS(money("less")),
    DESIGN_COSTS_MORE(money("more")),
    SHORTFALLS_NONE,
    SHORTFALLS_ABOVE(count("all")),
    SHORTFALLS_AS_ABOVE(count("all")),
    SHORTFALLS_BELOW(count("all"), count("further"));

    private final List<Slot> slots;

    ResultMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
