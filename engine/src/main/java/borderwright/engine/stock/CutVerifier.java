package borderwright.engine.stock;

import borderwright.engine.problem.FailedCheckException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Checks an answer with nothing but the rules: it shares no code with the search.
 *
 * <p>Two questions: whether pieces laid on one board keep clear of each other by the kerf and stay inside the trims, and
 * whether a packing serves every demand from the boards to be had.
 */
public final class CutVerifier {
    private CutVerifier() {}

    /**
     * Faults of pieces laid one after another on a board, a kerf between them; empty when it is right.
     *
     * @param boardTicks length of the board
     * @param trimTicks cut off each end
     * @param kerfTicks width of a cut
     * @param pieceTicks lengths in order
     */
    public static List<String> faultsOfBoard(long boardTicks, long trimTicks, long kerfTicks, List<Long> pieceTicks) {
        List<String> faults = new ArrayList<>();
        long at = trimTicks;
        for (int i = 0; i < pieceTicks.size(); i++) {
            long length = pieceTicks.get(i);
            if (length <= 0) {
                faults.add("piece " + i + " has no length");
            }
            at += (i > 0 ? kerfTicks : 0) + length;
        }
        if (!pieceTicks.isEmpty() && at > boardTicks - trimTicks) {
            faults.add("pieces end at " + at + " ticks, the board at " + (boardTicks - trimTicks));
        }
        return faults;
    }

    /**
     * A packing that has no faults.
     *
     * @throws FailedCheckException when it has
     */
    public static Packing verified(StockCase stock, Packing packing) {
        FailedCheckException.refuse("A packing of boards", faults(stock, packing));
        return packing;
    }

    /** Faults of a packing against its case; empty when every piece is cut and no board is over-used. */
    public static List<String> faults(StockCase stock, Packing packing) {
        List<String> faults = new ArrayList<>();
        long[] made = new long[stock.sizes()];
        long[] boards = new long[stock.boards()];
        for (int p = 0; p < packing.kinds(); p++) {
            CuttingPattern pattern = packing.pattern(p);
            boards[pattern.board()] += packing.times(p);
            long used = 0;
            for (int k = 0; k < pattern.kinds(); k++) {
                used += stock.size(pattern.item(k)) * pattern.count(k);
                made[pattern.item(k)] += (long) pattern.count(k) * packing.times(p);
            }
            if (used > stock.capacity(pattern.board())) {
                faults.add("pattern " + p + " uses " + used + " of " + stock.capacity(pattern.board()));
            }
        }
        for (int i = 0; i < made.length; i++) {
            if (made[i] < stock.demand(i)) {
                faults.add("size " + stock.size(i) + ": " + made[i] + " of " + stock.demand(i) + " cut");
            }
        }
        for (int j = 0; j < boards.length; j++) {
            long packed = (boards[j] + stock.pack(j) - 1) / stock.pack(j) * stock.pack(j);
            if (packed > stock.available(j)) {
                faults.add("board " + j + ": " + packed + " bought of " + stock.available(j) + " "
                        + Arrays.toString(boards));
            }
        }
        return faults;
    }
}
