package borderwright.pack.bench;

import borderwright.engine.assembly.AssemblyMessage;
import borderwright.engine.assembly.order.AssemblyStep;
import borderwright.engine.message.Message;
import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.List;

/**
 * How a box, and all built alike, is put together.
 *
 * @param names of the boxes, in short
 * @param holes how each kind of screw is drilled for
 * @param steps in order
 */
public record OrderView(String names, List<Message> holes, List<Pictured> steps) {
    private static final int COLUMNS = 3;

    public OrderView {
        holes = List.copyOf(holes);
        steps = List.copyOf(steps);
    }

    /** The steps as they stand on paper: so many side by side as have room in three columns. */
    public List<List<Pictured>> rows() {
        List<List<Pictured>> rows = new ArrayList<>();
        List<Pictured> row = new ArrayList<>();
        for (Pictured step : steps) {
            if (columns(row) + step.columns() > COLUMNS) {
                rows.add(List.copyOf(row));
                row.clear();
            }
            row.add(step);
        }
        if (!row.isEmpty()) {
            rows.add(List.copyOf(row));
        }
        return rows;
    }

    private static int columns(List<Pictured> row) {
        return row.stream().mapToInt(Pictured::columns).sum();
    }

    /** Columns that a row leaves empty. */
    public int left(List<Pictured> row) {
        return COLUMNS - columns(row);
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

        /** Columns that it takes: two for more lengths than the two diagonals of a rectangle. */
        public int columns() {
            return distances().size() > 2 ? 2 : 1;
        }

        /** Lengths to check one by one. */
        public List<Message> distances() {
            return step.details().stream()
                    .filter(detail -> detail.code() == AssemblyMessage.DIAGONAL_LENGTH)
                    .toList();
        }

        /** What else is told of it before its lengths. */
        public List<Message> before() {
            return step.details().subList(0, firstDistance());
        }

        /** What else is told of it after them. */
        public List<Message> after() {
            return step.details()
                    .subList(
                            firstDistance() + distances().size(), step.details().size());
        }

        private int firstDistance() {
            List<Message> distances = distances();
            return distances.isEmpty() ? step.details().size() : step.details().indexOf(distances.get(0));
        }
    }
}
