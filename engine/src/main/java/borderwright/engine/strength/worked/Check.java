package borderwright.engine.strength.worked;

import borderwright.engine.message.Message;
import java.util.List;

/**
 * One check of one part: how much of its resistance is used.
 *
 * @param part which part, with its label where it has one
 * @param what what is checked, such as bending
 * @param clause of the rule
 * @param loading under which load case
 * @param utilisation load effect over resistance; at most 1 holds
 * @param working how the figure was calculated
 */
public record Check(
        Message part, Message what, Message clause, Message loading, double utilisation, List<SheetLine> working) {
    /** What bears nothing at all counts as used so far: a figure that can be printed. */
    public static final double MOST_USE = 100;

    public Check {
        working = List.copyOf(working);
        utilisation = Math.min(utilisation, MOST_USE);
        if (!(utilisation >= 0)) {
            throw new IllegalArgumentException(
                    "a utilisation is 0 or more, got " + utilisation + " for " + what + " of " + part);
        }
    }

    public boolean holds() {
        return utilisation <= 1;
    }
}
