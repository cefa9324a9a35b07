package borderwright.engine.strength.bracing;

import borderwright.engine.effort.WorkListener;
import borderwright.engine.message.Message;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;

/** Reports each way of bracing a box as it is looked into. Safe for several threads. */
public final class Looks {
    /** Reports nothing. */
    public static final Looks UNHEARD = new Looks(WorkListener.NONE, tried -> BracingMessage.CHECKING_BOX.of("", 0, 0));

    private final WorkListener listener;
    private final IntFunction<Message> step;
    private final AtomicInteger tried = new AtomicInteger();

    /**
     * @param listener that hears of each way
     * @param step what it hears, by how many ways were looked into before
     */
    public Looks(WorkListener listener, IntFunction<Message> step) {
        this.listener = listener;
        this.step = step;
        listener.begins(step.apply(0));
    }

    void next() {
        listener.begins(step.apply(tried.incrementAndGet()));
    }
}
