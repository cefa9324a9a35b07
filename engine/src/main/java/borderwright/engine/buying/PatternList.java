package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import borderwright.engine.stock.Pattern;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every full pattern, or every one where offcuts are kept, that an answer below a target may use: those whose reduced cost, in whole numbers, is within the gap.
 * A pattern is full when no further wanted piece fits; any answer can be made of full ones, since more pieces than wanted
 * do no harm.
 *
 * <p>Depth first over the sizes, cut off by an exact table of what the sizes still to come can be worth.
 */
final class PatternList {
    private static final long MOST_ENTRIES = 40_000_000;
    /** Patterns listed before a tree over them is thought hopeless. */
    private static final int MOST_PATTERNS = 20_000;

    private final StockCase stock;
    private final long[] value;
    private final long scale;
    private final int most;
    private final Budget budget;
    private final List<Pattern> found = new ArrayList<>();
    private final int[] size;
    private final int[] limit;
    private final int[] counts;
    private long[][] rest = {};
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
     */
    private PatternList(StockCase stock, long[] value, long scale, int most, Budget budget) {
        this.stock = stock;
        this.value = value;
        this.scale = scale;
        this.most = most;
        this.budget = budget;
        int n = stock.sizes();
        this.size = new int[n];
        this.limit = new int[n];
        this.counts = new int[n];
        for (int i = 0; i < n; i++) {
            size[i] = (int) stock.size(i);
            limit[i] = stock.demand(i);
        }
    }

    /** A list for one part of a programme, at the prices of its best bound; there must be one. */
    static PatternList atBestPrices(Master master, int s, Budget budget) {
        StockCase stock = master.rows.model.parts.get(s);
        int from = master.rows.rowOfSize(s, 0);
        return new PatternList(
                stock,
                Arrays.copyOfRange(master.bestPrices(), from, from + stock.sizes()),
                master.pricing.scale,
                MOST_PATTERNS,
                budget);
    }

    /**
     * Every pattern of one part that an answer within a gap of the best bound may use.
     *
     * @param gap scaled
     * @return the patterns; null where there are too many to list, or the budget did not suffice
     */
    static @Nullable List<Pattern> within(Master master, int s, long gap, Budget budget) {
        StockCase stock = master.rows.model.parts.get(s);
        PatternList list = atBestPrices(master, s, budget);
        boolean complete = list.fits();
        for (int j = 0; j < stock.boards() && complete; j++) {
            if (stock.available(j) >= stock.pack(j)) {
                complete = list.list(j, master.pricing.worthOf(master.bestPrices(), s, j) - gap);
            }
        }
        return complete ? list.found() : null;
    }

    /** Whether the table fits in memory. */
    boolean fits() {
        return (stock.sizes() + 1L) * (stock.longest() + 1) <= MOST_ENTRIES;
    }

    /** Fills the table, once; whether the budget was enough for that. */
    boolean prepare() {
        if (rest.length == 0) {
            complete = fillTable();
        }
        return complete;
    }

    /** Greatest worth of any pattern of a board, once prepared. */
    long bestWorth(int ofBoard) {
        return rest[0][(int) stock.capacity(ofBoard)];
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
        if (rest[0][(int) stock.capacity(board)] >= least) {
            choose(0, (int) stock.capacity(board), 0);
        }
        return complete;
    }

    /** Fills the table from the last size on, as far as the budget goes; whether that is all of it. */
    private boolean fillTable() {
        int n = size.length;
        int capacity = (int) stock.longest();
        rest = new long[n + 1][];
        rest[n] = new long[capacity + 1];
        for (int i = n - 1; i >= 0; i--) {
            long[] next = rest[i + 1];
            long[] here = new long[capacity + 1];
            rest[i] = here;
            int w = size[i];
            if (limit[i] >= capacity / w) {
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
        return true;
    }

    private void choose(int i, int room, long worth) {
        if (!complete) {
            return;
        }
        if (i == size.length) {
            long used = stock.capacity(board) - room;
            if (stock.keeps() ? worth - useOf(used) >= least : isFull(room)) {
                found.add(Pattern.ofCounts(board, counts));
                complete = found.size() <= most && budget.spend(size.length);
            }
            return;
        }
        int w = size[i];
        int a = Math.min(limit[i], room / w);
        for (; a >= 0 && complete; a--) {
            long with = worth + a * value[i];
            if (with + rest[i + 1][room - a * w] >= least) {
                counts[i] = a;
                choose(i + 1, room - a * w, with);
                counts[i] = 0;
            }
        }
    }

    private long useOf(long used) {
        return Math.min(stock.use(board, used), (1L << 60) / scale) * scale;
    }

    private boolean isFull(int room) {
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

    List<Pattern> found() {
        return found;
    }
}
