package borderwright.pack.tables;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Rows of the shopping table that are no goods. */
enum TableMessage implements MessageCode {
    TABLE_DELIVERY,
    TABLE_FETCHING,
    TABLE_TAX,
    TABLE_TOTAL,
    TABLE_ALL_SUPPLIERS,
    TABLE_LISTED,
    TABLE_USUAL,
    TABLE_NOBODY;

    @Override
    public List<Slot> slots() {
        return List.of();
    }
}
