package borderwright.engine.effort;

import java.util.function.BooleanSupplier;

/**
 * How much work a search may do: whole work units, so that the same input gives the same answer on any machine, and a
 * signal to stop that may come from a clock or a person.
 *
 * <p>One unit is about one pass of an innermost loop over a thousand numbers. Not safe for use by two threads, but the
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
     * @param units work units, at least 0
     * @param stop asked now and then; once it says yes the budget is spent
     */
    public Budget(long units, BooleanSupplier stop) {
        if (units < 0) {
            throw new IllegalArgumentException("a budget needs 0 units or more, got " + units);
        }
        this.limit = units > Long.MAX_VALUE / 1000 ? Long.MAX_VALUE : units * 1000;
        this.stop = stop;
    }

    /** A budget of work units alone. */
    public static Budget ofUnits(long units) {
        return new Budget(units, () -> false);
    }

    /** A budget for part of the work: at most {@code units}, and never more than this one has left. */
    public Budget part(long units) {
        Budget part = new Budget(
                Math.max(0, Math.min(units, (limit - spentThousandths) / 1000)), () -> stopped || stop.getAsBoolean());
        part.stopped = stopped;
        return part;
    }

    /** A budget for other work, whatever is left of this one; the same signal stops both. */
    public Budget separate(long units) {
        return new Budget(units, stop);
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

    /** Work units used so far. */
    public long used() {
        return spentThousandths / 1000;
    }
}
