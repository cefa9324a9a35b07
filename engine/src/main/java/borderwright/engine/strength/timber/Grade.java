package borderwright.engine.strength.timber;

import org.jspecify.annotations.Nullable;

/**
 * What is known of a board's quality.
 *
 * @param stamped its strength class or grade as stamped; null where it has none
 * @param arrivesWet whether it is built in near fibre saturation, so that it dries under load
 */
public record Grade(@Nullable String stamped, boolean arrivesWet) {
    /** Of a board that is built in near fibre saturation. */
    public static Grade wet(@Nullable String stamped) {
        return new Grade(stamped, true);
    }

    /** Of a board that is built in dry. */
    public static Grade dry(@Nullable String stamped) {
        return new Grade(stamped, false);
    }
}
