/**
 * From measures to positions, with their uncertainty.
 *
 * <p>To be completed by the stage's maker: demands, promises, method in numbered steps, sources, where to start reading.
 */
@NullMarked
package borderwright.engine.survey;

import org.jspecify.annotations.NullMarked;
