/**
 * Which pieces fit on which board: the geometry shared by buying and cutting.
 *
 * <p><b>Settles</b> how pieces, kerf and trims become whole sizes and capacities, which pieces fit together on a board,
 * and whether a laid board is right.
 *
 * <p><b>Takes</b> pieces and how the person cuts. <b>Gives</b> demands, stock cases, patterns and packings.
 *
 * <p><b>Units.</b> Ticks of 1/320 mm in a {@code long}; inside a {@link borderwright.engine.stock.StockCase} ticks
 * divided by a common divisor.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>A piece takes its length and one kerf; a board gives its length without trims and one kerf more. So n pieces need
 *       n - 1 kerfs, and a remainder thinner than the kerf is sawdust.
 *   <li>A bevelled end takes kerf / cos(tilt); a piece is charged for its steeper end, which suffices when the pieces of
 *       a board are laid with the steepest first.
 *   <li>Everything is divided by its common divisor.
 * </ol>
 *
 * <p><b>Sources.</b> Gilmore and Gomory, A linear programming approach to the cutting-stock problem, Operations Research
 * 9 (1961) and 11 (1963), from memory.
 *
 * <p><b>Does not cover</b> pieces ripped from wider boards, and defects in a board.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.stock.StockCase}.
 */
@NullMarked
package borderwright.engine.stock;

import org.jspecify.annotations.NullMarked;
