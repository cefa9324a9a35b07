package borderwright.engine.buying.boards;

import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Consolidates boards to reach a quantity price break, topping up with uncut boards, or gives the break up. A heuristic, one
 * break after another.
 *
 * <p>See docs/decisions/0059.
 */
public final class PriceBreakHeuristic {
    private final StockCase stock;
    private final List<Cut> cuts = new ArrayList<>();
    private final int[] used;

    /** Boards that are cut to one pattern. */
    private static final class Cut {
        private final CuttingPattern pattern;
        private final long length;
        private int times;

        Cut(CuttingPattern pattern, long length, int times) {
            this.pattern = pattern;
            this.length = length;
            this.times = times;
        }
    }

    /** So many boards of a cut on another board, which saves so much for each. */
    private record Move(Cut cut, int to, int times, long saves) {}

    private PriceBreakHeuristic(StockCase stock, Packing packing) {
        this.stock = stock;
        this.used = packing.boards(stock);
        for (int p = 0; p < packing.kinds(); p++) {
            CuttingPattern pattern = packing.pattern(p);
            cuts.add(new Cut(pattern, pattern.used(stock), packing.times(p)));
        }
    }

    /** The same pieces on each board, on other boards where that costs less; the packing itself where all boards are free. */
    public static Packing of(StockCase stock, Packing packing) {
        if (!stock.isAnySoldFrom()) {
            return packing;
        }
        PriceBreakHeuristic gathering = new PriceBreakHeuristic(stock, packing);
        for (int j = 0; j < stock.boards(); j++) {
            if (gathering.isFromNumber(j)) {
                gathering.settle(j);
            }
        }
        Packing gathered = new Packing();
        gathering.cuts.forEach(cut -> gathered.add(cut.pattern, cut.times));
        return gathered;
    }

    private boolean isFromNumber(int j) {
        return stock.least(j) > 1 && !stock.isPacked(j) && stock.available(j) >= stock.least(j);
    }

    private void settle(int j) {
        List<Move> gathered = gathered(j);
        long saved = saved(gathered) + idle(j, used[j]) - idle(j, used[j] + boards(gathered));
        if (used[j] > 0 && used[j] < stock.least(j)) {
            List<Move> left = left(j);
            long savedByLeaving = saved(left) + idle(j, used[j]);
            if (boards(left) == used[j] && savedByLeaving > Math.max(0, saved)) {
                left.forEach(this::carryOut);
                return;
            }
        }
        if (saved > 0) {
            gathered.forEach(this::carryOut);
        }
    }

    /** What boards cost that are bought for their number alone. */
    private long idle(int j, int boards) {
        return boards == 0 || boards >= stock.least(j) ? 0 : (stock.least(j) - boards) * stock.cost(j);
    }

    private static long saved(List<Move> moves) {
        return moves.stream().mapToLong(m -> m.times * m.saves).sum();
    }

    private static int boards(List<Move> moves) {
        return moves.stream().mapToInt(Move::times).sum();
    }

    /** Boards that come to {@code j}: all that save by it, and others up to its number while that is less than an idle board. */
    private List<Move> gathered(int j) {
        List<Move> all = new ArrayList<>();
        for (Cut cut : cuts) {
            int from = cut.pattern.board();
            if (cut.times > 0 && from != j && isFree(from) && cut.length <= stock.capacity(j)) {
                all.add(new Move(cut, j, cut.times, saves(cut, j)));
            }
        }
        all.sort(Comparator.comparingLong((Move m) -> -m.saves));
        List<Move> taken = new ArrayList<>();
        int most = stock.available(j) - used[j];
        int number = used[j];
        for (Move move : all) {
            int times = Math.min(move.times, most);
            if (move.saves <= 0) {
                times = -move.saves >= stock.cost(j) ? 0 : Math.min(times, stock.least(j) - number);
            }
            if (times > 0) {
                taken.add(new Move(move.cut, j, times, move.saves));
                number += times;
                most -= times;
            }
        }
        return taken;
    }

    /** Boards of {@code j} on the cheapest others that take them. */
    private List<Move> left(int j) {
        List<Move> moves = new ArrayList<>();
        int[] free = used.clone();
        for (Cut cut : cuts) {
            int left = cut.pattern.board() == j ? cut.times : 0;
            while (left > 0) {
                int to = -1;
                for (int k = 0; k < free.length; k++) {
                    boolean takes = k != j
                            && isOpen(k)
                            && stock.capacity(k) >= cut.length
                            && free[k] < stock.available(k)
                            && !stock.isPacked(k);
                    to = takes && (to < 0 || saves(cut, k) > saves(cut, to)) ? k : to;
                }
                if (to < 0) {
                    break;
                }
                int times = Math.min(left, stock.available(to) - free[to]);
                moves.add(new Move(cut, to, times, saves(cut, to)));
                free[to] += times;
                left -= times;
            }
        }
        return moves;
    }

    /** Whether a board may be given up without falling below a number. */
    private boolean isFree(int j) {
        return stock.least(j) == 1 && !stock.isPacked(j);
    }

    /** Whether more boards may be taken at their price. */
    private boolean isOpen(int j) {
        return stock.least(j) == 1 || used[j] >= stock.least(j);
    }

    private long saves(Cut cut, int to) {
        int from = cut.pattern.board();
        return stock.cost(from) + stock.use(from, cut.length) - stock.cost(to) - stock.use(to, cut.length);
    }

    private void carryOut(Move move) {
        move.cut.times -= move.times;
        cuts.add(new Cut(move.cut.pattern.on(move.to), move.cut.length, move.times));
        used[move.cut.pattern.board()] -= move.times;
        used[move.to] += move.times;
    }
}
