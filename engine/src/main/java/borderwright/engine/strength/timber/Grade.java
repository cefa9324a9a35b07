package borderwright.engine.strength.timber;

import org.jspecify.annotations.Nullable;

/**
 * What is known of a board's quality.
 *
 * @param stamped its strength class or grade as stamped; null where it has none
 * @param putInWet whether it is built in near fibre saturation, so that it dries under load
 */
public record Grade(@Nullable String stamped, boolean putInWet) {}
