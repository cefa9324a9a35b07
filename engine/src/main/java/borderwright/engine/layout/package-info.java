/**
 * From the border and the wishes to the plan outline and bed level of each box.
 *
 * <p>To be completed by the stage's maker: demands, promises, method in numbered steps, sources, where to start reading.
 */
@NullMarked
package borderwright.engine.layout;

import org.jspecify.annotations.NullMarked;
