package borderwright.engine.stock;

/** The most valuable pieces for boards of every length, exactly, with a limit on the pieces of each size. */
public interface PieceTable {
    /** Longest board, in whole sizes, for which a plain table is kept; longer ones are listed. */
    long MOST_PLAIN = 300_000;

    /** From this length on a list is shorter than a plain table where few pieces go on a board. */
    long LIST_FROM = 20_000;

    /** A table for falling sizes and the longest board, of the kind that suits them. */
    static PieceTable of(long[] size, long longest) {
        boolean fewOnBoard = size.length > 0 && longest >= LIST_FROM && longest < 6 * size[size.length - 1];
        return longest <= MOST_PLAIN && !fewOnBoard
                ? new Knapsack(size, (int) longest)
                : new ListKnapsack(size, longest);
    }

    /**
     * Works the table out, or as much of it as the budget allows.
     *
     * @param value worth of one piece of each size; sizes without worth are left out
     * @param limit most pieces of each size
     * @param budget charged with every pass of the innermost loop
     */
    void solve(long[] value, int[] limit, Budget budget);

    /** Worth of the best pieces for a board. */
    long best(long length);

    /** Writes how many pieces of each size are the best for a board. */
    void counts(long length, int[] counts);

    /** Whether {@link #best} is the best there is: no list grew too long, and the budget sufficed. */
    boolean isExact();
}
