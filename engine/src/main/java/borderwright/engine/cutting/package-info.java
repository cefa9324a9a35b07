/**
 * From boards in hand, pieces and saws to which piece comes from which board, at which set-up, in which order.
 *
 * <p>To be completed by the stage's maker.
 */
@NullMarked
package borderwright.engine.cutting;

import org.jspecify.annotations.NullMarked;
