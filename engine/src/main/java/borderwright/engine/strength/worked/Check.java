package borderwright.engine.strength.worked;

import java.util.List;

/**
 * One check of one part: how much of what it can bear is used.
 *
 * @param part which part, in words, with its label where it has one
 * @param what what is checked, such as {@code bending}
 * @param clause where the rule stands
 * @param loading under which load case
 * @param utilisation load effect over resistance; at most 1 holds
 * @param working how the figure came about; empty where it was not asked for
 */
public record Check(
        String part, String what, String clause, String loading, double utilisation, List<SheetLine> working) {
    public Check {
        working = List.copyOf(working);
        if (!(utilisation >= 0)) {
            throw new IllegalArgumentException(
                    "a utilisation is 0 or more, got " + utilisation + " for " + what + " of " + part);
        }
    }

    public boolean holds() {
        return utilisation <= 1;
    }
}
