/**
 * The cheapest boards for pieces, by column generation and branching.
 *
 * <p><b>Settles</b> how many boards of which length of which supplier give all pieces at the least cost, with a bound
 * that is true in whole numbers.
 *
 * <p><b>Takes</b> stock cases and rows that couple them; <b>gives</b> packings, costs and bounds.
 *
 * <p><b>Units.</b> Sizes in ticks over a common divisor; money in grains.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buying.boards.MasterProgram}.
 */
@NullMarked
package borderwright.engine.buying.boards;

import org.jspecify.annotations.NullMarked;
