package borderwright.engine.shopping;

import borderwright.engine.message.Message;
import java.math.BigDecimal;

/**
 * Something to buy that is not a board.
 *
 * @param item its name, as suppliers' goods name it
 * @param quantity how much is needed
 * @param unit in words, such as {@code pieces}, {@code m2}, {@code litres}
 * @param why what it is for, with the figures it follows from
 */
public record ShoppingItem(String item, BigDecimal quantity, String unit, Message why) {
    /** This and more of the same. */
    ShoppingItem and(ShoppingItem more) {
        if (!item.equals(more.item) || !unit.equals(more.unit)) {
            throw new IllegalArgumentException(
                    item + " in " + unit + " and " + more.item + " in " + more.unit + " are not the same goods");
        }
        return new ShoppingItem(item, quantity.add(more.quantity), unit, ShoppingMessage.TWO_USES.of(why, more.why));
    }
}
