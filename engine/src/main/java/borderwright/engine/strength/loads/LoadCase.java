package borderwright.engine.strength.loads;

import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.message.Message;
import borderwright.engine.strength.frame.Loads;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.TimberAge;
import java.util.Set;

/**
 * One load case of a box.
 *
 * @param event what happens
 * @param side side on which it happens; -1 for all
 * @param duration of its shortest load
 * @param age of the timber by then
 * @param lasting loads that stay
 * @param passing loads that come and go
 * @param empty indices of the planters that are not filled yet
 */
public record LoadCase(
        LoadEvent event,
        int side,
        LoadDuration duration,
        TimberAge age,
        Loads lasting,
        Loads passing,
        Set<Integer> empty) {
    public LoadCase {
        empty = Set.copyOf(empty);
    }

    /** All planters full. */
    static LoadCase full(LoadEvent event, LoadDuration duration, TimberAge age, Loads lasting, Loads passing) {
        return new LoadCase(event, -1, duration, age, lasting, passing, Set.of());
    }

    /** A person on the edge of a side, all planters full. */
    static LoadCase onEdge(int side, Loads lasting, Loads push) {
        return new LoadCase(
                LoadEvent.PERSON_ON_EDGE, side, LoadDuration.SHORT, TimberAge.CREPT, lasting, push, Set.of());
    }

    /** What happens, for people. */
    public Message name() {
        return side < 0 ? event.of() : event.of(PieceLabels.letter(side));
    }

    public boolean isFull() {
        return empty.isEmpty();
    }

    /** All of it times its factors. */
    public Loads factored(double lastingFactor, double passingFactor) {
        return Loads.sum(lasting, lastingFactor, passing, passingFactor);
    }
}
