package borderwright.engine.strength.bracing;

import borderwright.engine.effort.Budget;
import borderwright.engine.effort.WorkListener;
import borderwright.engine.message.Message;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;

/** The looks at ways of bracing one box: how much work they may take, and who hears of each. Safe for several threads. */
public final class Looks {
    /**
     * Thousands of multiplications that the search with the walls requested may take. The boxes of the examples take 46,000 at
     * most, a joined run of twenty planters with six courses 667,000.
     */
    private static final long MOST_STEPS = 2_000_000;

    /** Of that, what each search for another way to build the box may take. */
    private static final long SHARE_OF_OTHERS = 2;

    /** Reports nothing. */
    public static final Looks UNHEARD = new Looks(WorkListener.NONE, tried -> BracingMessage.CHECKING_BOX.of("", 0, 0));

    private final WorkListener listener;
    private final IntFunction<Message> step;
    private final long steps;
    private final AtomicInteger tried = new AtomicInteger();

    /**
     * @param listener that hears of each way
     * @param step what it hears, by how many ways were looked into before
     */
    public Looks(WorkListener listener, IntFunction<Message> step) {
        this(listener, step, MOST_STEPS);
    }

    private Looks(WorkListener listener, IntFunction<Message> step, long steps) {
        this.listener = listener;
        this.step = step;
        this.steps = steps;
        listener.begins(step.apply(0));
    }

    /** The same with less work, thousands of multiplications. */
    Looks within(long mostSteps) {
        return new Looks(listener, step, mostSteps);
    }

    /** Work for the walls requested. */
    Budget budget() {
        return Budget.ofSteps(steps);
    }

    /** Work for another way to build the box. */
    Budget budgetOfOthers() {
        return Budget.ofSteps(steps / SHARE_OF_OTHERS);
    }

    void next() {
        listener.begins(step.apply(tried.incrementAndGet()));
    }
}
