package borderwright.engine.buying.boards;

import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.StockCase;
import java.util.List;

/** What the solution at hand of a master programme says of its rows and counts. */
public final class ProgramFigures {
    private final ModelRows rows;
    private final LinearProgram program;
    private final PatternPricing pricing;
    private final List<ModelColumn> fixed;
    private final int firstFixed;

    ProgramFigures(
            ModelRows rows, LinearProgram program, PatternPricing pricing, List<ModelColumn> fixed, int firstFixed) {
        this.rows = rows;
        this.program = program;
        this.pricing = pricing;
        this.fixed = fixed;
        this.firstFixed = firstFixed;
    }

    /** What a pack of a board gains by its side row at the present prices, in cost; 0 where it has none. */
    public double sideWorth(int s, int j) {
        BoardModel.Side side = rows.model.side(s, j);
        if (side.isNone()) {
            return 0;
        }
        int row = rows.sideFrom + side.row();
        return Math.max(0, program.price(row)) * rows.costUnit * rows.unit(row) * side.value();
    }

    /** Sum of the packs of a part, each times a number for its board. */
    public double packsTimes(int s, long[] times) {
        double sum = 0;
        for (int c = 0; c < fixed.size(); c++) {
            ModelColumn column = fixed.get(c);
            if (column.kind() == ModelColumn.Kind.COUNT && column.part() == s) {
                sum += program.value(firstFixed + c) * times[column.index()];
            }
        }
        return sum;
    }

    /** What the last pricing says that the programme cannot go under, roughly; 0 where boards are counted. */
    double leastValue() {
        double most = 1;
        for (int s = 0; s < rows.parts(); s++) {
            StockCase stock = rows.stock(s);
            for (int j = 0; j < stock.boards(); j++) {
                if (rows.isCounted(s, j)) {
                    return 0;
                }
                if (rows.isUsable(s, j)) {
                    double best = pricing.table(s).best(stock.capacity(j));
                    most = Math.max(most, best / Math.max(1, pricing.worthOf(s, j)));
                }
            }
        }
        return program.objective() / most - 1e-7;
    }
}
