package borderwright.pack.bench;

import borderwright.engine.message.Message;
import borderwright.pack.paper.Drawing;
import java.util.List;

/**
 * A floor as it is printed, for itself and for those like it.
 *
 * @param title which it is
 * @param alike the others that read the same
 * @param told how it is seen and where the tape hooks
 * @param drawing from above
 * @param rows every piece: along the slats, then across
 * @param screws every fixing
 */
public record FloorView(
        String title,
        List<String> alike,
        List<Message> told,
        Drawing drawing,
        List<BenchRow> rows,
        List<ScrewRow> screws) {
    public FloorView {
        alike = List.copyOf(alike);
        told = List.copyOf(told);
        rows = List.copyOf(rows);
        screws = List.copyOf(screws);
    }

    /** The rows under shared headings, as they are printed. */
    public List<BenchGroup> groups() {
        return BenchGroup.ofFloor(rows);
    }
}
