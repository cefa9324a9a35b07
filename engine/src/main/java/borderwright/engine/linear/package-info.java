/**
 * Linear programming by the revised simplex method, with columns that come and go.
 *
 * <p><b>Settles</b> the cheapest point of a linear programme in floating point; nothing is proven here.
 *
 * <p><b>Takes</b> sparse columns with costs and bounds, rows that ask for at least their right-hand side;
 * <b>gives</b> values, row prices and a basis that a later call starts from.
 *
 * <p><b>Units.</b> None: costs and rows are plain numbers.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.linear.LinearProgram}.
 */
@NullMarked
package borderwright.engine.linear;

import org.jspecify.annotations.NullMarked;
