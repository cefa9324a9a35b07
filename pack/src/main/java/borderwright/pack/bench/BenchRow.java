package borderwright.pack.bench;

import java.util.List;

/**
 * A line of a bench table: one piece and where it lies, as printed.
 *
 * @param what it is
 * @param label its mark
 * @param from nearest distance from the hook; of a floor's cross-pieces, across
 * @param to farthest distance
 * @param bottom lower height, or of a floor the nearest distance across
 * @param top upper height, or of a floor the farthest distance across
 * @param notes what else is to be known
 */
public record BenchRow(
        String what, String label, String from, String to, String bottom, String top, List<String> notes) {
    public BenchRow {
        notes = List.copyOf(notes);
    }

    /** All that is printed but the mark. */
    String unnamed() {
        return String.join("|", what, from, to, bottom, top);
    }
}
