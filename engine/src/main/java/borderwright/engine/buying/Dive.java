package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import borderwright.engine.stock.GreedyFill;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.Pattern;
import borderwright.engine.stock.StockCase;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * From a solved master programme of one section to whole numbers of boards: whole parts are taken at once, then the
 * fullest fractions are rounded up one after another, and the programme is solved again for what is left. At every step
 * the rest is also packed by rule of thumb.
 */
final class Dive {
    private final Master master;
    private final StockCase stock;
    private final Budget budget;
    private final SplittableRandom random;
    private final boolean straight;
    private final int[] left;
    private final int[] boardsLeft;
    private final int[] boardsUsed;
    private Packing fixed = new Packing();
    private @Nullable Packing best;
    private long bestCost;
    private final long enough;

    /**
     * A dive.
     *
     * @param master a solved master programme of one part
     * @param bestCost cost to beat
     * @param enough stop as soon as a packing costs no more
     * @param seed 0 for the straight dive, others stray from it a little
     */
    Dive(Master master, long bestCost, long enough, long seed, Budget budget) {
        this.master = master;
        this.stock = master.model.parts.get(0);
        this.budget = budget;
        this.bestCost = bestCost;
        this.enough = enough;
        this.straight = seed == 0;
        this.random = new SplittableRandom(seed);
        this.left = stock.copyOfDemand();
        this.boardsLeft = stock.copyOfAvailable();
        this.boardsUsed = new int[stock.boards()];
    }

    /** A packing that costs less than the cost to beat, or null. The master programme is left as it was. */
    @Nullable
    Packing run() {
        while (anyLeft() && bestCost > enough) {
            boolean moved = takeWholes();
            if (!moved) {
                moved = takeFullest();
            }
            if (!moved) {
                break;
            }
            complete();
            if (!anyLeft() || bestCost <= enough || !resolve()) {
                break;
            }
        }
        restore();
        return best;
    }

    private boolean anyLeft() {
        for (int n : left) {
            if (n > 0) {
                return true;
            }
        }
        return false;
    }

    private boolean takeWholes() {
        boolean moved = false;
        for (int c = 0; c < master.columns.size(); c++) {
            Pattern pattern = master.columns.get(c).pattern();
            if (pattern != null) {
                double x = master.value(c);
                int times = (int) Math.floor(x + 1e-6);
                if (times > 0) {
                    moved |= take(pattern, times);
                }
            }
        }
        return moved;
    }

    private boolean takeFullest() {
        int fullest = -1;
        double most = 0;
        for (int c = 0; c < master.columns.size(); c++) {
            Pattern pattern = master.columns.get(c).pattern();
            double x = pattern == null ? 0 : master.value(c);
            if (x > 1e-6) {
                double weight = straight ? x : x * (0.5 + random.nextDouble());
                if (weight > most) {
                    most = weight;
                    fullest = c;
                }
            }
        }
        Pattern pattern = fullest < 0 ? null : master.columns.get(fullest).pattern();
        return pattern != null && take(pattern, 1);
    }

    /** Cuts a pattern so often, less what is no longer wanted, filled up with what is. */
    private boolean take(Pattern pattern, int times) {
        int j = pattern.board();
        int often = Math.min(times, boardsLeft[j]);
        boolean moved = false;
        while (often > 0) {
            int[] counts = new int[left.length];
            long room = stock.capacity(j);
            int repeats = often;
            int pieces = 0;
            for (int k = 0; k < pattern.kinds(); k++) {
                int i = pattern.item(k);
                counts[i] = Math.min(pattern.count(k), left[i]);
                room -= counts[i] * stock.size(i);
                pieces += counts[i];
            }
            if (pieces == 0) {
                return moved;
            }
            for (int i = 0; i < left.length && room > 0; i++) {
                if (left[i] > counts[i] && stock.size(i) <= room) {
                    int more = (int) Math.min(left[i] - counts[i], room / stock.size(i));
                    counts[i] += more;
                    room -= more * stock.size(i);
                }
            }
            for (int i = 0; i < left.length; i++) {
                repeats = counts[i] > 0 ? Math.min(repeats, left[i] / counts[i]) : repeats;
            }
            fix(Pattern.ofCounts(j, counts), repeats);
            moved = true;
            often -= repeats;
        }
        return moved;
    }

    private void fix(Pattern pattern, int times) {
        int j = pattern.board();
        fixed.add(pattern, times);
        boardsUsed[j] += times;
        if (boardsLeft[j] != StockCase.UNLIMITED) {
            boardsLeft[j] -= times;
        }
        for (int k = 0; k < pattern.kinds(); k++) {
            int i = pattern.item(k);
            left[i] -= pattern.count(k) * times;
            master.program.require(master.rowOfSize(0, i), left[i]);
            master.limit(0, i, left[i]);
        }
        requireBoards(j);
    }

    private void requireBoards(int j) {
        if (master.rowOfBoard(0, j) >= 0) {
            master.program.require(
                    master.rowOfBoard(0, j), stock.isPacked(j) ? boardsUsed[j] : boardsUsed[j] - stock.available(j));
        }
    }

    /** Packs the rest by rule of thumb; a better packing is kept. */
    private void complete() {
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
        Packing whole = new Packing();
        whole.addAll(fixed);
        if (n > 0) {
            StockCase rest = stock.withDemand(left, kept).withAvailable(boardsLeft);
            budget.spend((long) n * stock.boards() * 4);
            Packing packed = GreedyFill.pack(rest);
            if (packed == null) {
                return;
            }
            for (int p = 0; p < packed.kinds(); p++) {
                whole.add(renumbered(packed.pattern(p), kept), packed.times(p));
            }
        }
        whole = Downsize.of(stock, whole);
        long cost = whole.cost(stock);
        if (cost < bestCost) {
            bestCost = cost;
            best = whole;
        }
    }

    private static Pattern renumbered(Pattern pattern, int[] kept) {
        int[] item = new int[pattern.kinds()];
        int[] count = new int[pattern.kinds()];
        for (int k = 0; k < item.length; k++) {
            item[k] = kept[pattern.item(k)];
            count[k] = pattern.count(k);
        }
        return new Pattern(pattern.board(), item, count);
    }

    /** Solves the programme for what is left; false when no completion can beat the best. */
    private boolean resolve() {
        double unit = master.costUnit();
        double spent = 0;
        for (int j = 0; j < boardsUsed.length; j++) {
            spent += stock.isPacked(j) ? 0 : (double) boardsUsed[j] * stock.cost(j);
        }
        double cutoff = (bestCost - spent) / unit - 1e-6;
        if (!master.program.dual(1e6, budget) && budget.isSpent()) {
            return false;
        }
        for (int round = 0; round < 30; round++) {
            if (!master.program.primal(budget)) {
                return false;
            }
            if (!master.priceOut(budget, false)) {
                break;
            }
        }
        return master.program.objective() < cutoff && !budget.isSpent();
    }

    private void restore() {
        for (int i = 0; i < left.length; i++) {
            master.program.require(master.rowOfSize(0, i), stock.demand(i));
            master.limit(0, i, stock.demand(i));
        }
        for (int j = 0; j < boardsUsed.length; j++) {
            boardsUsed[j] = 0;
            requireBoards(j);
        }
        master.program.dual(Double.POSITIVE_INFINITY, budget);
    }
}
