package borderwright.engine.stock;

import borderwright.engine.effort.Budget;
import java.util.function.LongUnaryOperator;

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

    /**
     * The length that the best pieces for a board take where taking a length is charged for: what they are worth less the
     * charge is then greatest.
     *
     * @param length of the board
     * @param charge for each length taken; never falls
     */
    long bestLength(long length, LongUnaryOperator charge);

    /** Writes how many pieces of each size are the best for a board. */
    void counts(long length, int[] counts);

    /** Whether {@link #best} is the best there is: no list grew too long, and the budget sufficed. */
    boolean isExact();
}
