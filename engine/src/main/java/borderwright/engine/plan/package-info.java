/**
 * Ties the stages together: a garden in, a whole plan out.
 *
 * <p>To be completed by the stage's maker.
 */
@NullMarked
package borderwright.engine.plan;

import org.jspecify.annotations.NullMarked;
