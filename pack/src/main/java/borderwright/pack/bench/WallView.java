package borderwright.pack.bench;

import borderwright.engine.message.Message;
import borderwright.pack.paper.Drawing;
import java.util.List;

/**
 * A wall or divider as it is printed, for itself and for those like it.
 *
 * @param title which it is
 * @param alike the others that read the same; mirror images do not
 * @param told which face is up, where the tape hooks and the corner lies, and packers
 * @param thickness of its boards
 * @param drawing seen with the face that is worked on up
 * @param rows every piece
 * @param screws every fixing
 */
public record WallView(
        String title,
        List<String> alike,
        List<Message> told,
        String thickness,
        Drawing drawing,
        List<BenchRow> rows,
        List<ScrewRow> screws) {
    public WallView {
        alike = List.copyOf(alike);
        told = List.copyOf(told);
        rows = List.copyOf(rows);
        screws = List.copyOf(screws);
    }
}
