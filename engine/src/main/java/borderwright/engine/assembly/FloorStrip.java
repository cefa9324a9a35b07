package borderwright.engine.assembly;

import borderwright.engine.buildup.parts.Piece;
import java.util.List;

/**
 * A slat, bearer or leg of a floor, seen from above.
 *
 * @param label its mark
 * @param role slat, bearer or leg
 * @param edges its two long edges: of a slat their distances behind the hook, of a bearer or leg their distances along
 * @param low its ends along the first edge
 * @param high its ends along the second edge
 * @param height of its two faces, or of a leg's ends, above the bed
 * @param notches of a slat
 */
public record FloorStrip(
        String label, Piece.Role role, Span edges, Span low, Span high, Span height, List<Notch> notches) {
    public FloorStrip {
        notches = List.copyOf(notches);
    }

    /**
     * A rectangle taken out of a slat.
     *
     * @param along where, along the slats from the hook
     * @param edge from which edge
     * @param depthMm across the slat
     */
    public record Notch(Span along, Edge edge, double depthMm) {}

    /** The two long edges of a slat, as seen from the hook. */
    public enum Edge {
        NEAR,
        FAR
    }

    /** Its ends where it has its whole width. */
    Span whole() {
        return low.within(high);
    }

    /** From its first point to its last. */
    public Span overall() {
        return low.with(high);
    }
}
