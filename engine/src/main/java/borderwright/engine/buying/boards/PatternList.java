package borderwright.engine.buying.boards;

import borderwright.engine.effort.Budget;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every full pattern that an answer below a target may use: those whose reduced cost, in whole numbers, is within the gap. A
 * pattern is full when no further wanted piece fits; any answer can be made of full ones, since more pieces than wanted do
 * no harm. Where offcuts are kept, or sizes do not say all of what fits, those that are not full are listed too.
 *
 * <p>Depth first over the sizes, cut off by a table of what the sizes still to come can be worth. Where an exact one would be
 * too large, its sizes and lengths are counted in whole parts, rounded down: what fits then still fits.
 */
public final class PatternList {
    private static final long MOST_ENTRIES = 4_000_000;
    /** Patterns listed before a tree over them is thought hopeless. */
    private static final int MOST_PATTERNS = 20_000;
    /** Passes that it takes to ask a rule for a pattern, roughly. */
    private static final int RULE_WORK = 20_000;

    private final StockCase stock;
    private final long[] value;
    private final long scale;
    private final int most;
    private final Budget budget;
    private final List<CuttingPattern> found = new ArrayList<>();
    private final long[] size;
    /** Length of one part of the table, and each size in whole parts. */
    private final long part;

    private final int[] parts;
    private final int[] limit;
    private final int[] counts;
    /** What sizes from one on can be worth for every length, in parts; shared by lists at the same prices. */
    private final Worths worths;

    private boolean complete = true;
    private int board;
    private long least;

    /**
     * A list for one section.
     *
     * @param stock the section
     * @param value worth of one piece of each size, scaled
     * @param scale what a unit of cost is in units of worth
     * @param most patterns after which the list is given up
     * @param worths table at these values, filled when it is first needed
     */
    private PatternList(StockCase stock, long[] value, long scale, int most, Worths worths, Budget budget) {
        this.stock = stock;
        this.worths = worths;
        this.value = value;
        this.scale = scale;
        this.most = most;
        this.budget = budget;
        int n = stock.sizes();
        this.size = stock.copyOfSizes();
        this.part = 1 + (n + 1L) * (stock.longest() + 1) / MOST_ENTRIES;
        this.parts = new int[n];
        this.limit = new int[n];
        this.counts = new int[n];
        for (int i = 0; i < n; i++) {
            parts[i] = (int) (size[i] / part);
            limit[i] = stock.demand(i);
        }
    }

    /** A table that takes long to fill. */
    static final class Worths {
        private long[][] rest = {};
    }

    /** A list for one part of a programme, at the prices of its best bound; there must be one. */
    static PatternList atBestPrices(MasterProgram master, int s, Budget budget) {
        StockCase stock = master.model().parts.get(s);
        int from = master.rows().rowOfSize(s, 0);
        return new PatternList(
                stock,
                Arrays.copyOfRange(master.best().bestPrices(), from, from + stock.sizes()),
                master.scale(),
                MOST_PATTERNS,
                master.best().worths(s),
                budget);
    }

    /**
     * Every pattern of one part that an answer within a gap of the best bound may use.
     *
     * @param gap scaled
     * @return the patterns; null where there are too many to list, or the budget did not suffice
     */
    public static @Nullable List<CuttingPattern> within(MasterProgram master, int s, long gap, Budget budget) {
        StockCase stock = master.model().parts.get(s);
        PatternList list = atBestPrices(master, s, budget);
        boolean complete = true;
        for (int j = 0; j < stock.boards() && complete; j++) {
            if (stock.available(j) >= stock.pack(j)) {
                complete = list.list(j, master.worthOf(master.best().bestPrices(), s, j) - gap);
            }
        }
        return complete ? list.found() : null;
    }

    /** Fills the table, once; whether the budget was enough for that. */
    boolean prepare() {
        if (worths.rest.length == 0) {
            complete = fillTable();
        }
        return complete;
    }

    /** No pattern of a board is worth more, once prepared. */
    long bestWorth(int ofBoard) {
        return worths.rest[0][(int) (stock.capacity(ofBoard) / part)];
    }

    /**
     * Adds the patterns of one board that are worth at least {@code leastWorth}.
     *
     * @return whether all of them were listed
     */
    boolean list(int ofBoard, long leastWorth) {
        if (!prepare()) {
            return false;
        }
        board = ofBoard;
        least = leastWorth;
        if (bestWorth(board) >= least) {
            choose(0, stock.capacity(board), (int) (stock.capacity(board) / part), 0);
        }
        return complete;
    }

    /** Fills the table from the last size on, as far as the budget goes; whether that is all of it. */
    private boolean fillTable() {
        int n = size.length;
        int capacity = (int) (stock.longest() / part);
        long[][] rest = new long[n + 1][];
        rest[n] = new long[capacity + 1];
        for (int i = n - 1; i >= 0; i--) {
            long[] next = rest[i + 1];
            long[] here = new long[capacity + 1];
            rest[i] = here;
            int w = parts[i];
            if (w > 0 && limit[i] >= capacity / w) {
                for (int c = 0; c <= capacity; c++) {
                    here[c] = c < w ? next[c] : Math.max(next[c], here[c - w] + value[i]);
                }
            } else {
                for (int c = 0; c <= capacity; c++) {
                    long best = next[c];
                    for (int a = 1; a <= limit[i] && a * w <= c; a++) {
                        best = Math.max(best, next[c - a * w] + a * value[i]);
                    }
                    here[c] = best;
                }
            }
            if (!budget.spend((long) capacity * Math.min(limit[i], 4))) {
                return false;
            }
        }
        worths.rest = rest;
        return true;
    }

    private void choose(int i, long room, int roomParts, long worth) {
        if (!complete) {
            return;
        }
        if (i == size.length) {
            long used = stock.capacity(board) - room;
            if (stock.keeps() ? worth - useOf(used) >= least : stock.isRuled() || isFull(room)) {
                CuttingPattern pattern = CuttingPattern.ofCounts(board, counts);
                if (stock.admits(pattern)) {
                    found.add(pattern);
                }
                complete = found.size() <= most && budget.spend(stock.isRuled() ? RULE_WORK : size.length);
            }
            return;
        }
        long w = size[i];
        int a = (int) Math.min(limit[i], room / w);
        for (; a >= 0 && complete; a--) {
            long with = worth + a * value[i];
            if (with + worths.rest[i + 1][roomParts - a * parts[i]] >= least) {
                counts[i] = a;
                choose(i + 1, room - a * w, roomParts - a * parts[i], with);
                counts[i] = 0;
            }
        }
    }

    private long useOf(long used) {
        return Math.min(stock.use(board, used), (1L << 60) / scale) * scale;
    }

    private boolean isFull(long room) {
        for (int i = size.length - 1; i >= 0; i--) {
            if (size[i] > room) {
                return true;
            }
            if (counts[i] < limit[i]) {
                return false;
            }
        }
        return true;
    }

    List<CuttingPattern> found() {
        return found;
    }
}
