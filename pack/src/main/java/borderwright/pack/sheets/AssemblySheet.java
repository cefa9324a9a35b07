package borderwright.pack.sheets;

import borderwright.pack.bench.OrderView;
import java.util.List;

/**
 * How the boxes are put together, step by step.
 *
 * @param orders one for each group of boxes built alike
 */
public record AssemblySheet(List<OrderView> orders) implements Sheet {
    public AssemblySheet {
        orders = List.copyOf(orders);
    }

    @Override
    public String title() {
        return "At the bench: order of assembly";
    }

    @Override
    public Part part() {
        return Part.BENCH;
    }
}
