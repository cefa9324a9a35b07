package borderwright.engine.plan;

import java.math.BigDecimal;

/**
 * Something to buy that is not a board.
 *
 * @param item its name, as suppliers' goods name it
 * @param quantity how much is needed
 * @param unit in words, such as {@code pieces}, {@code m2}, {@code litres}
 * @param why what it is for, with the figures it follows from
 */
public record ShoppingItem(String item, BigDecimal quantity, String unit, String why) {}
