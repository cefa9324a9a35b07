package borderwright.engine.buying.boards;

/** A node of {@link CountTree}: bounds on every count and extra, and what no answer within them costs less than. */
final class CountNode {
    final long[] low;
    final long[] high;
    final int depth;
    final long number;
    long bound;

    CountNode(long[] low, long[] high, int depth, long number, long bound) {
        this.low = low;
        this.high = high;
        this.depth = depth;
        this.number = number;
        this.bound = bound;
    }
}
