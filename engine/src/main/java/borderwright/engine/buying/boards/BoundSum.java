package borderwright.engine.buying.boards;

/**
 * Sums of a bound in whole numbers that never overflow: where a term does not fit the bound is given up or taken lower, which
 * keeps it true.
 */
final class BoundSum {
    /** Stands for a sum that does not fit: no bound. */
    static final long NONE = Long.MIN_VALUE / 2;

    private BoundSum() {}

    /** A cost in scaled units; one that does not fit counts as less, which a bound may do. */
    static long scaled(long cost, long by) {
        return by * Math.min(cost, (1L << 60) / by);
    }

    /** The sum less {@code times} x {@code each}, both at least 0. */
    static long less(long total, long times, long each) {
        long product = saturatedTimes(times, each);
        return total == NONE || product == Long.MAX_VALUE ? NONE : Math.max(NONE, total - product);
    }

    /** The sum and {@code times} x {@code each}, both at least 0; the sum alone where that does not fit. */
    static long more(long total, long times, long each) {
        long product = saturatedTimes(times, each);
        // A bound may always be lower than it could be.
        return product > Long.MAX_VALUE / 4 || total > Long.MAX_VALUE / 4 ? total : total + product;
    }

    /** a x b, both at least 0; {@link Long#MAX_VALUE} where it is too large to go on with. */
    static long saturatedTimes(long a, long b) {
        boolean fits = Math.multiplyHigh(a, b) == 0 && a * b >= 0 && a * b <= Long.MAX_VALUE / 4;
        return fits ? a * b : Long.MAX_VALUE;
    }
}
