package borderwright.pack.bench;

import borderwright.engine.assembly.order.AssemblyStep;
import borderwright.engine.message.Message;
import borderwright.pack.paper.Drawing;
import java.util.List;

/**
 * How a box, and all built alike, is put together.
 *
 * @param names of the boxes, in short
 * @param holes how each kind of screw is drilled for
 * @param steps in order
 */
public record OrderView(String names, List<Message> holes, List<Pictured> steps) {
    public OrderView {
        holes = List.copyOf(holes);
        steps = List.copyOf(steps);
    }

    /** The steps three by three, as they stand on paper. */
    public List<List<Pictured>> rows() {
        return Rows.of(steps, 3);
    }

    /**
     * A step with its picture.
     *
     * @param step what is done
     * @param pieces that it adds, in short
     * @param fixings that it takes, each a line
     * @param picture of it
     */
    public record Pictured(AssemblyStep step, String pieces, List<String> fixings, Drawing picture) {
        public Pictured {
            fixings = List.copyOf(fixings);
        }

        /** Whether its details are read one by one: distances to check are. */
        public boolean isList() {
            return step.kind() == AssemblyStep.Kind.SQUARE;
        }
    }
}
