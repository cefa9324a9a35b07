package borderwright.engine.shopping;

import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Something to buy that is not a board.
 *
 * @param item its name, as suppliers' goods name it
 * @param quantity how much is needed
 * @param unit in words, such as {@code pieces}, {@code m2}, {@code litres}
 * @param why what it is for, with the figures it follows from
 */
public record ShoppingItem(String item, BigDecimal quantity, String unit, Message why) {
    /** What is measured out, as it is bought: to the tenth of its unit, rounded up. */
    public static BigDecimal upToTenth(double quantity) {
        return BigDecimal.valueOf(quantity).setScale(1, RoundingMode.CEILING);
    }

    /** This and more of the same. */
    ShoppingItem and(ShoppingItem more) {
        if (!item.equals(more.item) || !unit.equals(more.unit)) {
            throw new IllegalArgumentException(
                    item + " in " + unit + " and " + more.item + " in " + more.unit + " are not the same goods");
        }
        return new ShoppingItem(item, quantity.add(more.quantity), unit, ShoppingMessage.TWO_USES.of(why, more.why));
    }
}
