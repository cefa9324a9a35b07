package borderwright.engine.buying.list;

/** Told whenever a better basket or a better bound is known. */
@FunctionalInterface
public interface Progress {
    /**
     * A better answer or bound is known.
     *
     * @param cost cost of the best basket so far, minor units
     * @param bound no basket costs less, minor units
     */
    void better(long cost, long bound);
}
