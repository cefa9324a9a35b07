package borderwright.engine.effort;

import java.util.function.BooleanSupplier;

/**
 * How much a search may do: whole search steps, so that the same input gives the same answer on any machine, and a
 * signal to stop that may come from a clock or a person.
 *
 * <p>One step is about one pass of an innermost loop over a thousand numbers. Not safe for use by two threads, but the
 * stop signal may be raised from any.
 */
public final class Budget {
    /** Passes after which the signal is asked again, besides when {@link #isSpent} is. */
    private static final long ASKING = 2_000;

    private final long limit;
    private final BooleanSupplier stop;
    private long spentThousandths;
    private long askAt;
    private boolean stopped;

    /**
     * @param steps search steps, at least 0
     * @param stop asked now and then; once it says yes the budget is spent
     */
    public Budget(long steps, BooleanSupplier stop) {
        if (steps < 0) {
            throw new IllegalArgumentException("a budget needs 0 steps or more, got " + steps);
        }
        this.limit = steps > Long.MAX_VALUE / 1000 ? Long.MAX_VALUE : steps * 1000;
        this.stop = stop;
    }

    /** A budget of search steps alone. */
    public static Budget ofSteps(long steps) {
        return new Budget(steps, () -> false);
    }

    /** A budget for part of the work: at most {@code steps}, and never more than this one has left. */
    public Budget part(long steps) {
        Budget part = new Budget(
                Math.max(0, Math.min(steps, (limit - spentThousandths) / 1000)), () -> stopped || stop.getAsBoolean());
        part.stopped = stopped;
        return part;
    }

    /** A budget for other work, whatever is left of this one; the same signal stops both. */
    public Budget separate(long steps) {
        return new Budget(steps, stop);
    }

    /** Counts {@code passes} passes of an innermost loop; answers whether work may go on. */
    public boolean spend(long passes) {
        spentThousandths += passes;
        if (spentThousandths >= askAt) {
            // To ask a clock takes as long as a short loop.
            askAt = spentThousandths + ASKING;
            return !isSpent();
        }
        stopped |= spentThousandths > limit;
        return !stopped;
    }

    public boolean isSpent() {
        stopped = stopped || spentThousandths > limit || stop.getAsBoolean();
        return stopped;
    }

    /** Steps used so far. */
    public long used() {
        return spentThousandths / 1000;
    }
}
