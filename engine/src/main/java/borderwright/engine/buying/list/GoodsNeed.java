package borderwright.engine.buying.list;

import java.math.BigDecimal;

/**
 * Something to buy that is not a board.
 *
 * @param item its name, as suppliers' goods name it
 * @param quantity how much, above 0
 * @param unit unit of the quantity, in words
 */
public record GoodsNeed(String item, BigDecimal quantity, String unit) {
    public GoodsNeed {
        if (quantity.signum() <= 0) {
            throw new IllegalArgumentException("quantity of " + item + " must be above 0, got " + quantity);
        }
    }
}
