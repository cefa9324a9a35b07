package borderwright.engine.assembly;

import borderwright.engine.buildup.parts.Box;
import java.util.List;

/**
 * Screws, or other fixings of one kind, in a line.
 *
 * @param fixing which, and its holes
 * @param from which way they are driven
 * @param through label of what lies under the heads; empty for every board of the wall
 * @param into label of what they end in; empty for every board of the wall
 * @param marks where each goes
 * @param edgeMm of capping how far behind its outer edge; of a strap round an inner corner, how far the nearer screw of a leg
 *     is from the edge at which the inner faces meet; else the least distance to an edge of the board, mm
 * @param endMm of a tie how far from the wall; of a strap round an inner corner, as {@code edgeMm} for the farther screw; else
 *     the least distance to an end of a board under the heads, mm
 */
public record FixingLine(
        Box.Fixing fixing, From from, String through, String into, List<Mark> marks, double edgeMm, double endMm) {
    public FixingLine {
        marks = List.copyOf(marks);
    }

    /** Where the heads are. */
    public enum From {
        /** On the face that is worked on: the outer face of a wall, the marked face of a divider. */
        FACE,
        /** On the other side: inside the box. */
        BACK,
        /** On top. */
        ABOVE,
        /** Along the wall, on the flank of what stands off it. */
        ALONG
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
        return new FixingLine(fixing, from, through, into, shown, edgeMm, endMm);
    }

    public int count() {
        return marks.size();
    }

    public Box.Hold hold() {
        return fixing.hold();
    }
}
