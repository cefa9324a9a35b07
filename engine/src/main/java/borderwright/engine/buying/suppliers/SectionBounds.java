package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.boards.BoardModel;
import borderwright.engine.buying.boards.MasterProgram;
import borderwright.engine.buying.boards.SectionSearch;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.List;

/**
 * What whole boards of each section cost at least: rows that a coupled programme is given, so that its bound is no weaker
 * than that of sections searched apart.
 *
 * <p>A row that asks an order for a value makes boards of that supplier cheaper by what the value is worth. At these lower
 * costs a section is searched on its own, in whole boards; no boards that serve it come to less, with the row or without
 * (Lagrange relaxation of the rows that couple, its bounds kept as rows; Geoffrion 1974, from memory).
 *
 * <p>See docs/decisions/0056.
 */
final class SectionBounds {
    /** Parts of a grain in which lowered costs are counted. */
    private static final double FINENESS = 8;

    private static final double MOST_COST = Math.scalb(1.0, 40);
    private static final double VIOLATED = 2e-6;

    private final ShoppingCase shopping;
    private final SupplierCase c;
    private final SharedSearches sections;
    private boolean exact;

    SectionBounds(ShoppingCase shopping, SupplierCase c, SharedSearches sections) {
        this.shopping = shopping;
        this.c = c;
        this.sections = sections;
    }

    /** Floors that a solved programme does not reach yet; each search has {@code effort} units of the budget. */
    List<BoardModel.Floor> missed(MasterProgram master, Budget budget, long effort) {
        exact = true;
        List<BoardModel.Floor> missed = new ArrayList<>();
        for (int s = 0; s < shopping.sections.size(); s++) {
            StockCase stock = master.model().parts.get(s);
            if (stock.sizes() == 0 || stock.keeps()) {
                continue;
            }
            ShoppingSection section = shopping.sections.get(s);
            long[] costs = new long[stock.boards()];
            boolean lowered = false;
            for (int j = 0; j < costs.length; j++) {
                double less = master.figures().sideWorth(s, j);
                lowered |= less > 0;
                costs[j] = (long) Math.max(0, Math.floor(Math.min(MOST_COST, FINENESS * (stock.cost(j) - less))));
            }
            look(master, s, sections.of(c, section), plainCosts(stock), budget, effort, missed);
            if (lowered) {
                look(master, s, sections.of(c, section, costs), costs, budget, effort, missed);
            }
        }
        return missed;
    }

    /** Whether every search of the last call came to its end. */
    boolean isExact() {
        return exact;
    }

    private static long[] plainCosts(StockCase stock) {
        long[] costs = new long[stock.boards()];
        for (int j = 0; j < costs.length; j++) {
            costs[j] = stock.cost(j);
        }
        return costs;
    }

    private void look(
            MasterProgram master,
            int s,
            SectionSearch search,
            long[] costs,
            Budget budget,
            long effort,
            List<BoardModel.Floor> missed) {
        if (!search.isProven()) {
            Budget share = budget.part(effort);
            search.run(share);
            budget.spend(1000 * share.used());
        }
        exact &= search.isProven();
        long least = search.bound();
        if (least > 0 && least < Long.MAX_VALUE && master.figures().packsTimes(s, costs) < least * (1 - VIOLATED)) {
            missed.add(new BoardModel.Floor(s, costs, least));
        }
    }
}
