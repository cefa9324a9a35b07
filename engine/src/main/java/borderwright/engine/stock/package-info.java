/**
 * Which pieces fit on which board: the geometry shared by buying and cutting.
 *
 * <p>To be completed by the stage's maker.
 */
@NullMarked
package borderwright.engine.stock;

import org.jspecify.annotations.NullMarked;
