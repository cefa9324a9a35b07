/**
 * The height of a false floor as a lever on money.
 *
 * <p><b>Settles</b> what a floor of each height saves in soil and costs in boards.
 *
 * <p><b>Takes</b> boxes and price lists; <b>gives</b> floor options.
 *
 * <p><b>Units.</b> Millimetres, m3, money in the currency of the garden.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.floors.FloorOptionFinder}.
 */
@NullMarked
package borderwright.engine.floors;

import org.jspecify.annotations.NullMarked;
