/**
 * Everything to buy that is not a board, as a list.
 *
 * <p><b>Settles</b> which items, how many, in which unit.
 *
 * <p><b>Takes</b> boxes, ground and filling; <b>gives</b> shopping items and the choice of bags.
 *
 * <p><b>Units.</b> Units of sale; m3 for bulk.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.shopping.ShoppingList}.
 */
@NullMarked
package borderwright.engine.shopping;

import org.jspecify.annotations.NullMarked;
