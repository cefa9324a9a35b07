package borderwright.engine.assembly;

import borderwright.engine.buildup.parts.Box;
import java.util.List;

/**
 * Screws, or other fixings of one kind, in a line.
 *
 * @param fixing which, and its holes
 * @param through label of what lies under the heads; empty for every board of the wall
 * @param into label of what they end in
 * @param marks where each goes
 * @param edgeMm least distance to an edge of the board under the heads, mm
 * @param endMm least distance to an end of a board under the heads, mm
 */
public record FixingLine(
        Box.Fixing fixing, String through, String into, List<Mark> marks, double edgeMm, double endMm) {
    public FixingLine {
        marks = List.copyOf(marks);
    }

    /**
     * A place on the face.
     *
     * @param xMm from the hook
     * @param upMm above the bottom edge; of a floor, behind the hook
     */
    public record Mark(double xMm, double upMm) {}

    /** The same line of which only some marks are shown. */
    public FixingLine withMarks(List<Mark> shown) {
        return new FixingLine(fixing, through, into, shown, edgeMm, endMm);
    }

    public int count() {
        return marks.size();
    }

    public Box.Hold hold() {
        return fixing.hold();
    }
}
