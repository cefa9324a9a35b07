/**
 * From pieces, quantities, price lists and terms to the cheapest basket, with a proven lower bound.
 *
 * <p>To be completed by the stage's maker.
 */
@NullMarked
package borderwright.engine.buying;

import org.jspecify.annotations.NullMarked;
