/**
 * From a box on the plan to every piece of wood in it, with its end cuts and its place.
 *
 * <p>To be completed by the stage's maker: demands, promises, method in numbered steps, sources, where to start reading.
 */
@NullMarked
package borderwright.engine.buildup;

import org.jspecify.annotations.NullMarked;
