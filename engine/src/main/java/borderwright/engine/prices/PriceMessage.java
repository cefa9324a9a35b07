package borderwright.engine.prices;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What is wrong with a price list. */
enum PriceMessage implements MessageCode {
    NO_BOARD_PRICE(text("section"), text("supplier"));

    private final List<Slot> slots;

    PriceMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
