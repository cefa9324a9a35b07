package borderwright.engine.shopping;

import static borderwright.engine.message.Slot.area;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.site;
import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.volume;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What goods on the shopping list are for, and what they usually cost. */
enum ShoppingMessage implements MessageCode {
    TWO_USES(message("first"), message("next")),
    FILL_TO_BUY(volume("filled")),
    FLOOR_FABRIC_TO_BUY,
    LINER_TO_BUY(count("strips"), site("length"), site("wide"), site("long")),
    STAPLES_TO_BUY,
    FINISH_TO_BUY(count("coats"), area("area")),
    PRESERVATIVE_TO_BUY(count("ends")),
    GRAVEL_TO_BUY(volume("compacted")),
    PACKERS_TO_BUY,
    SKIPS_TO_HIRE(volume("moved"), volume("each")),
    MEMBRANE_TO_BUY(count("strips"), site("length"), site("wide"), site("long")),
    PINS_TO_BUY,
    GOODS_AT_USUAL_PRICE(text("item"), text("quantity"), text("unit"), money("sum"), message("packs")),
    GOODS_WITHOUT_PRICE(text("item"), text("quantity"), text("unit")),
    USUAL_EACH(count("count"), money("each")),
    USUAL_PACKS(count("count"), money("each"), text("contains"), text("unit"));

    private final List<Slot> slots;

    ShoppingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
