package borderwright.pack.bench;

import java.util.List;

/**
 * A line of a bench table: one piece and where it lies, as printed.
 *
 * @param what it is
 * @param label its mark
 * @param along from where to where on the tape; of a floor, then across
 * @param bottom lower height on a wall; empty on a floor
 * @param top upper height on a wall; empty on a floor
 * @param notes what else is to be known
 */
public record BenchRow(String what, String label, String along, String bottom, String top, List<String> notes) {
    public BenchRow {
        notes = List.copyOf(notes);
    }

    /** All that is printed but the mark. */
    String unnamed() {
        return String.join("|", what, along, bottom, top);
    }
}
