package borderwright.pack.sheets;

import borderwright.engine.assembly.AssemblyMessage;
import borderwright.engine.assembly.order.AssemblyStep;
import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import borderwright.pack.bench.OrderView;
import java.util.List;
import java.util.stream.Stream;

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

    /** What is needed besides wood and fixings. */
    public Message tools() {
        return SheetMessage.TOOLS_TO_BUILD.of(
                yes(hasDetail(AssemblyMessage.BRUSH_CUT_ENDS)),
                yes(steps().anyMatch(step -> step.kind() == AssemblyStep.Kind.LINING)),
                yes(steps().anyMatch(step -> step.what().code() == AssemblyMessage.MOVE_WALLS)));
    }

    private boolean hasDetail(MessageCode code) {
        return steps().flatMap(step -> step.details().stream()).anyMatch(detail -> detail.code() == code);
    }

    private Stream<AssemblyStep> steps() {
        return orders.stream().flatMap(order -> order.steps().stream()).map(OrderView.Pictured::step);
    }

    private static String yes(boolean is) {
        return is ? "yes" : "no";
    }

    @Override
    public Part part() {
        return Part.BENCH;
    }
}
