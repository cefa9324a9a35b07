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
 * @param width of its drawings on the page
 * @param drawings seen with the face that is worked on up; a long wall in stretches
 * @param rows every piece
 * @param screws every fixing
 */
public record WallView(
        String title,
        List<String> alike,
        List<Message> told,
        String thickness,
        Width width,
        List<Drawing> drawings,
        List<BenchRow> rows,
        List<ScrewRow> screws) {
    public WallView {
        alike = List.copyOf(alike);
        told = List.copyOf(told);
        drawings = List.copyOf(drawings);
        rows = List.copyOf(rows);
        screws = List.copyOf(screws);
    }

    /** How much of a page's width the drawing of a wall takes. */
    public enum Width {
        WHOLE,
        HALF
    }

    /** Whether its text stands beside its drawing. */
    public boolean isHalf() {
        return width == Width.HALF;
    }

    /** The rows under shared headings, as they are printed. */
    public List<BenchGroup> groups() {
        return BenchGroup.ofWall(rows);
    }
}
