package borderwright.engine.stock;

/** The most valuable pieces for boards of every length, exactly, with a limit on the pieces of each size. */
public interface PieceTable {
    /** Longest board, in whole sizes, for which a plain table is kept; longer ones are listed. */
    long MOST_PLAIN = 300_000;

    /** A table for sizes and the longest board, of the kind that suits its length. */
    static PieceTable of(long[] size, long longest) {
        return longest <= MOST_PLAIN ? new Knapsack(size, (int) longest) : new ListKnapsack(size, longest);
    }

    /**
     * Works the table out.
     *
     * @param value worth of one piece of each size; sizes without worth are left out
     * @param limit most pieces of each size
     */
    void solve(long[] value, int[] limit);

    /** Worth of the best pieces for a board. */
    long best(long length);

    /** Writes how many pieces of each size are the best for a board. */
    void counts(long length, int[] counts);

    /** Whether {@link #best} is the best there is; a list that grew too long only holds good ones. */
    boolean isExact();

    /** Passes of the innermost loop in the last {@link #solve}. */
    long passes();
}
