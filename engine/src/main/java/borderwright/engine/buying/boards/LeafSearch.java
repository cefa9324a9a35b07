package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.BoardTypes;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether boards of given numbers can give all pieces: every pattern that such an answer may use is listed, and searched
 * with the numbers of boards fixed.
 *
 * <p>A pattern may be used when what it costs beyond its worth, at the prices of the best bound, is within what the numbers
 * of boards leave of their cost, and when it wastes no more than all boards together have to spare.
 */
final class LeafSearch {
    private final MasterProgram master;
    private final Budget budget;
    private boolean settled = true;

    LeafSearch(MasterProgram master, Budget budget) {
        this.master = master;
        this.budget = budget;
    }

    /** Whether the last answer is certain: a packing was found, or there is none. */
    boolean isSettled() {
        return settled;
    }

    /** Packings of each part for so many of each count; null where none was found. */
    @Nullable
    List<Packing> pack(long[] at) {
        settled = true;
        long[] prices = master.best().bestPrices();
        // Where offcuts count, the numbers of boards do not say what a basket costs.
        if (prices.length == 0 || master.model().keeps()) {
            settled = false;
            return null;
        }
        int parts = master.model().parts.size();
        List<PatternList> lists = new ArrayList<>();
        for (int s = 0; s < parts; s++) {
            PatternList list = PatternList.atBestPrices(master, s, budget);
            lists.add(list);
            settled &= list.prepare();
        }
        long gap = settled ? gap(at, prices, lists) : -1;
        if (gap < 0) {
            // Below zero no answer has these numbers, unless sums ran over.
            settled &= gap != Long.MIN_VALUE;
            return null;
        }
        List<Packing> packings = new ArrayList<>();
        for (int s = 0; s < parts; s++) {
            Packing packing = pack(s, at, lists.get(s), prices, gap);
            if (packing == null) {
                return null;
            }
            packings.add(packing);
        }
        return packings;
    }

    /** What patterns may cost beyond their worth together, scaled; {@link Long#MIN_VALUE} where the sum does not fit. */
    private long gap(long[] at, long[] prices, List<PatternList> lists) {
        double rough = 0;
        long gap = 0;
        for (int r = 0; r < prices.length; r++) {
            rough += (double) prices[r] * master.rows().required[r];
            gap -= prices[r] * master.rows().required[r];
        }
        for (int c = 0; c < at.length; c++) {
            ModelColumn column = master.fixed().get(c);
            rough += Math.abs((double) column.worthAt(prices) * at[c]);
            gap += column.worthAt(prices) * at[c];
            if (column.kind() == Kind.COUNT) {
                int j = column.index();
                long over = lists.get(column.part()).bestWorth(j) - master.worthOf(prices, column.part(), j);
                long boards = at[c] * master.model().parts.get(column.part()).pack(j);
                rough += Math.max(0.0, (double) over * boards);
                gap += Math.max(0, over) * boards;
            }
        }
        return rough > Math.scalb(1.0, 61) ? Long.MIN_VALUE : gap;
    }

    private @Nullable Packing pack(int s, long[] at, PatternList list, long[] prices, long gap) {
        StockCase stock = master.model().parts.get(s);
        int[] boards = new int[stock.boards()];
        for (int c = 0; c < at.length; c++) {
            ModelColumn column = master.fixed().get(c);
            if (column.kind() == Kind.COUNT && column.part() == s) {
                boards[column.index()] = Math.toIntExact(at[c] * stock.pack(column.index()));
            }
        }
        long spare = 0;
        for (int j = 0; j < boards.length; j++) {
            spare += boards[j] * stock.capacity(j);
        }
        for (int i = 0; i < stock.sizes(); i++) {
            spare -= stock.demand(i) * stock.size(i);
        }
        if (spare < 0) {
            return null;
        }
        for (int j = 0; j < boards.length; j++) {
            if (boards[j] > 0 && !list.list(j, master.worthOf(prices, s, j) - gap)) {
                settled = false;
                return null;
            }
        }
        long most = spare;
        List<CuttingPattern> patterns = list.found().stream()
                .filter(p -> stock.capacity(p.board()) - p.used(stock) <= most)
                .toList();
        return search(stock, boards, patterns);
    }

    private @Nullable Packing search(StockCase stock, int[] boards, List<CuttingPattern> patterns) {
        long[] free = new long[boards.length];
        StockCase there = new StockCase(
                stock.copyOfSizes(),
                stock.copyOfDemand(),
                BoardTypes.singly(stock.copyOfCapacities(), free).available(boards));
        List<Packing> found = new ArrayList<>();
        PatternTree tree = new PatternTree(
                BoardModel.of(there),
                List.of(patterns),
                0,
                (packings, packs, extras) -> {
                    found.add(packings.get(0));
                    return -1;
                },
                b -> b,
                budget);
        tree.fixBoards();
        settled &= tree.search() || !found.isEmpty();
        return found.isEmpty() ? null : found.get(0);
    }
}
