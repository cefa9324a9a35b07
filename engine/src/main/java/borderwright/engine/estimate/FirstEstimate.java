package borderwright.engine.estimate;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A first range before any survey: two whole designs worked out, a sparing and a generous one.
 *
 * @param lines quantities with their ranges and money
 * @param totalLow money for the sparing design
 * @param totalHigh money for the generous one
 * @param simpleCount what counting the boards of the outer walls alone gives; empty where nothing can be estimated
 * @param leftOut what that count leaves out
 * @param assumedPrices common prices used where none was given, to be replaced by quotes
 * @param problems what cannot be estimated
 */
public record FirstEstimate(
        List<Line> lines,
        Money totalLow,
        Money totalHigh,
        Optional<Message> simpleCount,
        List<Message> leftOut,
        List<Message> assumedPrices,
        List<Problem> problems) {
    public FirstEstimate {
        lines = List.copyOf(lines);
        leftOut = List.copyOf(leftOut);
        assumedPrices = List.copyOf(assumedPrices);
        problems = List.copyOf(problems);
    }

    /**
     * One line of the estimate.
     *
     * @param what the goods with their quantities, sparing and generous
     * @param moneyLow cost, sparing
     * @param moneyHigh cost, generous
     */
    public record Line(Message what, Money moneyLow, Money moneyHigh) {}
}
