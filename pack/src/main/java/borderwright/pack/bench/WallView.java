package borderwright.pack.bench;

import borderwright.engine.message.Message;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import java.util.List;

/**
 * A wall or divider as it is printed, for itself and for those like it.
 *
 * @param title which it is
 * @param alike the others that read the same; mirror images do not
 * @param told which face is up, where the tape hooks and the corner lies, packers, and which labels the others have for those
 *     of the drawing
 * @param thickness of its boards
 * @param drawings seen with the face that is worked on up; a long wall in stretches
 * @param rows every piece
 * @param screws every fixing
 */
public record WallView(
        String title,
        List<String> alike,
        List<Message> told,
        String thickness,
        List<Drawing> drawings,
        List<BenchRow> rows,
        List<ScrewRow> screws) {
    /** A drawing that takes the whole width of a page, on any paper, is wider than this. */
    private static final double LEAST_WHOLE_MM = 120;

    public WallView {
        alike = List.copyOf(alike);
        told = List.copyOf(told);
        drawings = List.copyOf(drawings);
        rows = List.copyOf(rows);
        screws = List.copyOf(screws);
    }

    /** Whether its text stands beside its drawing. */
    public boolean isHalf() {
        return drawings.get(0).widthMm() < LEAST_WHOLE_MM;
    }

    /** The rows under shared headings, as they are printed. */
    public List<BenchGroup> groups(PrintedFigures f) {
        return BenchGroup.ofWall(rows, f);
    }
}
