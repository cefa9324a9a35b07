package borderwright.engine.estimate;

import borderwright.engine.problem.Problem;
import java.util.List;
import org.joda.money.Money;

/**
 * A first range before any survey: two whole designs worked out, a sparing and a generous one.
 *
 * @param lines quantities with their ranges and money
 * @param totalLow money for the sparing design
 * @param totalHigh money for the generous one
 * @param naive what a naive count of the boards gives, in words with numbers
 * @param forgotten what that count forgets, each a sentence with numbers
 * @param habits prices taken from habit, to be replaced by quotes; empty when all were given
 * @param problems wishes that cannot be planned, with what would be right
 */
public record FirstEstimate(
        List<Line> lines,
        Money totalLow,
        Money totalHigh,
        String naive,
        List<String> forgotten,
        List<String> habits,
        List<Problem> problems) {
    public FirstEstimate {
        lines = List.copyOf(lines);
        forgotten = List.copyOf(forgotten);
        habits = List.copyOf(habits);
        problems = List.copyOf(problems);
    }

    /**
     * One line of the estimate.
     *
     * @param what in words
     * @param low quantity with its unit, sparing
     * @param high quantity with its unit, generous
     * @param moneyLow cost, sparing
     * @param moneyHigh cost, generous
     */
    public record Line(String what, String low, String high, Money moneyLow, Money moneyHigh) {}
}
