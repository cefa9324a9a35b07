package borderwright.engine.plan;

import static borderwright.engine.message.Slot.area;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a comparison of designs comes to. */
enum ComparisonMessage implements MessageCode {
    NO_DESIGN_PLANNED,
    NO_DESIGN_MEETS_EVERYTHING(money("cost"), text("design"), count("unmet")),
    CHEAPER_DESIGN_FAILS(text("design"), money("less"), count("further"), message("first")),
    CHEAPEST_DESIGN(text("design")),
    CHEAPEST_DESIGN_SAVES(money("saved"), area("area"), text("way"), text("design")),
    DESIGN_MEETS_MORE_FOR_NOTHING(area("area"), text("way"), text("design")),
    DESIGN_MEETS_MORE_FOR_MONEY(money("extra"), area("area"), text("way"), text("design"));

    private final List<Slot> slots;

    ComparisonMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
