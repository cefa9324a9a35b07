package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.GreedyFill;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import borderwright.engine.stock.SubsetFill;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a dive has taken so far and what is left; the master programme asks for no more than that. */
final class ResidualDemand {
    private final MasterProgram master;
    private final ModelRows rows;
    private final Budget budget;
    /** Whether the boards are given, so that none is to be exchanged for a cheaper one. */
    private final boolean countsFixed;

    private final int[][] left;
    private final int[][] boardsLeft;
    private final int[][] boardsUsed;
    private final List<Taken> taken = new ArrayList<>();
    private double uncounted;

    /** Boards of a section that are cut to a pattern. */
    private record Taken(int part, CuttingPattern pattern, int times) {}

    /** Everything is left. */
    ResidualDemand(MasterProgram master, Budget budget) {
        this.master = master;
        this.rows = master.rows();
        this.budget = budget;
        int parts = rows.parts();
        this.left = new int[parts][];
        this.boardsLeft = new int[parts][];
        this.boardsUsed = new int[parts][];
        for (int s = 0; s < parts; s++) {
            StockCase stock = rows.stock(s);
            left[s] = stock.copyOfDemand();
            boardsLeft[s] = stock.copyOfAvailable();
            boardsUsed[s] = new int[stock.boards()];
        }
        boolean open = master.fixed().isEmpty();
        for (int c = 0; c < master.fixed().size(); c++) {
            ModelColumn column = master.fixed().get(c);
            open |= master.low(c) < master.high(c);
            if (column.kind() == Kind.COUNT) {
                int pack = rows.stock(column.part()).pack(column.index());
                boardsLeft[column.part()][column.index()] =
                        (int) Math.min(master.high(c) * pack, StockCase.UNLIMITED - 1);
            }
        }
        this.countsFixed = !open;
    }

    /** Number of takings so far, to come back to by {@link #undo}. */
    int takings() {
        return taken.size();
    }

    /** Cost of boards taken that are in no count of the programme, and of cutting what was taken. */
    double uncounted() {
        return uncounted;
    }

    boolean anyLeft() {
        for (int[] ofPart : left) {
            for (int n : ofPart) {
                if (n > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Cuts a pattern so often, less what is no longer wanted, filled up with what is. */
    boolean take(ModelColumn column, int times) {
        int s = column.part();
        int j = column.index();
        CuttingPattern pattern = column.pattern();
        StockCase stock = rows.stock(s);
        int often = Math.min(times, boardsLeft[s][j]);
        boolean moved = false;
        while (often > 0 && pattern != null) {
            int[] counts = new int[left[s].length];
            long room = stock.capacity(j);
            int pieces = 0;
            for (int k = 0; k < pattern.kinds(); k++) {
                int i = pattern.item(k);
                counts[i] = Math.min(pattern.count(k), left[s][i]);
                room -= counts[i] * stock.size(i);
                pieces += counts[i];
            }
            if (pieces == 0) {
                return moved;
            }
            int repeats = often;
            // Where sizes do not say all of what fits, what is put to a pattern may not.
            boolean fillsUp = !stock.isRuled();
            for (int i = 0; i < counts.length; i++) {
                if (fillsUp && room > 0 && left[s][i] > counts[i] && stock.size(i) <= room) {
                    int more = (int) Math.min(left[s][i] - counts[i], room / stock.size(i));
                    counts[i] += more;
                    room -= more * stock.size(i);
                }
                repeats = counts[i] > 0 ? Math.min(repeats, left[s][i] / counts[i]) : repeats;
            }
            fix(s, CuttingPattern.ofCounts(j, counts), repeats);
            moved = true;
            often -= repeats;
        }
        return moved;
    }

    private void fix(int s, CuttingPattern pattern, int times) {
        taken.add(new Taken(s, pattern, times));
        change(s, pattern, times);
    }

    /** Takes back all but the first so many patterns. */
    void undo(int kept) {
        while (taken.size() > kept) {
            Taken last = taken.remove(taken.size() - 1);
            change(last.part, last.pattern, -last.times);
        }
    }

    private void change(int s, CuttingPattern pattern, int times) {
        int j = pattern.board();
        boardsUsed[s][j] += times;
        boardsLeft[s][j] -= boardsLeft[s][j] == StockCase.UNLIMITED ? 0 : times;
        for (int k = 0; k < pattern.kinds(); k++) {
            int i = pattern.item(k);
            left[s][i] -= pattern.count(k) * times;
            master.requirePieces(s, i, left[s][i]);
        }
        StockCase stock = rows.stock(s);
        uncounted += stock.keeps() ? (double) times * stock.use(j, pattern.used(stock)) : 0;
        if (rows.isCounted(s, j)) {
            master.requireBoards(s, j, boardsUsed[s][j]);
        } else {
            uncounted += (double) times * stock.cost(j);
        }
    }

    /** All that is taken and the rest packed by a heuristic, a packing for each part; null where that finds none. */
    @Nullable
    List<Packing> packed() {
        List<Packing> whole = new ArrayList<>();
        for (int s = 0; s < left.length; s++) {
            StockCase stock = rows.stock(s);
            Packing packing = new Packing();
            for (Taken t : taken) {
                if (t.part == s) {
                    packing.add(t.pattern, t.times);
                }
            }
            budget.spend((long) left[s].length * stock.boards() * 4);
            Packing rest = rest(stock, left[s], boardsLeft[s]);
            if (rest == null) {
                return null;
            }
            packing.addAll(rest);
            whole.add(countsFixed ? packing : BoardDownsizing.of(stock, packing));
        }
        return whole;
    }

    private @Nullable Packing rest(StockCase stock, int[] left, int[] boardsLeft) {
        int n = 0;
        for (int l : left) {
            n += l > 0 ? 1 : 0;
        }
        int[] kept = new int[n];
        n = 0;
        for (int i = 0; i < left.length; i++) {
            if (left[i] > 0) {
                kept[n++] = i;
            }
        }
        Packing packing = new Packing();
        if (n > 0) {
            Packing packed = packed(
                    stock.withDemand(left, kept).withAvailable(boardsLeft).soldInAnyNumber());
            if (packed == null) {
                return null;
            }
            for (int p = 0; p < packed.kinds(); p++) {
                packing.add(renumbered(packed.pattern(p), kept), packed.times(p));
            }
        }
        return packing;
    }

    private @Nullable Packing packed(StockCase rest) {
        Packing greedy = GreedyFill.pack(rest);
        if (!SubsetFill.suits(rest)) {
            return greedy;
        }
        long most = greedy == null ? Long.MAX_VALUE : greedy.cost(rest) - 1;
        Packing filled = SubsetFill.pack(rest, 0, most, budget);
        return filled == null ? greedy : filled;
    }

    private static CuttingPattern renumbered(CuttingPattern pattern, int[] kept) {
        int[] item = new int[pattern.kinds()];
        int[] count = new int[pattern.kinds()];
        for (int k = 0; k < item.length; k++) {
            item[k] = kept[pattern.item(k)];
            count[k] = pattern.count(k);
        }
        return new CuttingPattern(pattern.board(), item, count);
    }
}
