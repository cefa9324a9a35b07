package borderwright.engine.strength.box;

import borderwright.engine.strength.frame.Loads;
import borderwright.engine.strength.timber.LoadDuration;
import java.util.Set;

/**
 * One load case of a box.
 *
 * @param words what happens, in words
 * @param duration of its shortest load
 * @param afterCreep whether the box has crept by then
 * @param lasting loads that stay
 * @param passing loads that come and go
 * @param empty indices of the planters that are not filled yet
 */
public record LoadCase(
        String words, LoadDuration duration, boolean afterCreep, Loads lasting, Loads passing, Set<Integer> empty) {
    public LoadCase {
        empty = Set.copyOf(empty);
    }

    /** All planters full. */
    static LoadCase full(String words, LoadDuration duration, boolean afterCreep, Loads lasting, Loads passing) {
        return new LoadCase(words, duration, afterCreep, lasting, passing, Set.of());
    }

    public boolean isFull() {
        return empty.isEmpty();
    }

    /** All of it times its factors. */
    public Loads factored(double lastingFactor, double passingFactor) {
        return Loads.sum(lasting, lastingFactor, passing, passingFactor);
    }
}
