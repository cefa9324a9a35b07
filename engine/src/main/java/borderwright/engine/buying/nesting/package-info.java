/**
 * A garden's basket: slanted ends nested into each other, some boards kept whole.
 *
 * <p><b>Settles</b> the basket of a garden, where neighbours on a board may share a slanted cut.
 *
 * <p><b>Takes</b> a shopping problem and the pieces behind it; <b>gives</b> the basket with its bound, and what
 * nesting saves.
 *
 * <p><b>Units.</b> Ticks; minor units.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buying.nesting.HeldBoards}.
 */
@NullMarked
package borderwright.engine.buying.nesting;

import org.jspecify.annotations.NullMarked;
