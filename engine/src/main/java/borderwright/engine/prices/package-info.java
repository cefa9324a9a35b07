/**
 * Price lists as they are quoted, turned into offers and terms in whole minor units.
 *
 * <p><b>Settles</b> what a board or a good costs, how an order gets home and what that costs.
 *
 * <p><b>Takes</b> suppliers as given, sections, a currency; <b>gives</b> offers, delivery options, supplier terms,
 * the longest piece of a section, and the price of a box by its pieces.
 *
 * <p><b>Units.</b> Money in whole minor units; lengths in ticks.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.prices.PriceLists}.
 */
@NullMarked
package borderwright.engine.prices;

import org.jspecify.annotations.NullMarked;
