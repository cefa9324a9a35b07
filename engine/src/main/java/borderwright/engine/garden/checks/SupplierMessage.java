package borderwright.engine.garden.checks;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.decimal;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What does not fit together in what a supplier asks. Amounts are in the currency of the garden. */
enum SupplierMessage implements MessageCode {
    FREE_DELIVERY_WITHOUT_CHARGE(decimal("value")),
    DELIVERY_BANDS_AND_CHARGE,
    COLLECTION_WITHOUT_DELIVERY,
    BAND_WITHOUT_DISTANCE,
    DELIVERY_RISES(decimal("charge"), decimal("value"), decimal("less"), decimal("below")),
    PRICE_MISSING,
    PRICES_OF_TWO_KINDS(list("kinds")),
    BOARD_LENGTH_MISSING,
    WHOLE_BOARD_OF_SEVERAL_LENGTHS,
    BOARD_SOLD_BY_LENGTH(text("price")),
    SOLD_LENGTHS_MISSING(text("price")),
    SOLD_LENGTH_TOO_SHORT(length("least")),
    MONEY_TOO_FINE(decimal("amount"), text("currency"), count("places"));

    private final List<Slot> slots;

    SupplierMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
