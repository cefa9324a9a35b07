package borderwright.engine.strength.box;

import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.TimberSection;
import java.util.List;

/**
 * One board of a wall, a divider or a tie as bars on its middle line.
 *
 * @param label as written on the piece
 * @param sectionName what it is cut from
 * @param side side of the box; -1 for dividers and ties
 * @param course its course from the bottom, 1 first; 0 for ties
 * @param bottomMm height of its underside
 * @param topMm height of its top
 * @param section its cross-section
 * @param outward unit vector out of the box; of a divider to its left
 * @param heldMm where uprights and dividers meet it, and its ends, along the side, in order; of others empty
 * @param parts its bars in order
 */
public record Board(
        String label,
        String sectionName,
        int side,
        int course,
        double bottomMm,
        double topMm,
        TimberSection section,
        Vector outward,
        List<Double> heldMm,
        List<Part> parts) {
    public Board {
        heldMm = List.copyOf(heldMm);
        parts = List.copyOf(parts);
    }

    /**
     * One bar between two crossings.
     *
     * @param member its index in the frame
     * @param startNode index of its first node
     * @param endNode index of its second node
     * @param fromMm distance of its start along the side from the side's first corner, mm; of others from their start
     * @param toMm distance of its end
     * @param start where it starts, mm
     * @param end where it ends, mm
     * @param rightPlanter index of the planter inside; of a divider the one on its right
     * @param leftPlanter of a divider the planter on its left; -1 otherwise
     */
    public record Part(
            int member,
            int startNode,
            int endNode,
            double fromMm,
            double toMm,
            Vector start,
            Vector end,
            int rightPlanter,
            int leftPlanter) {
        public double lengthMm() {
            return end.minus(start).length();
        }
    }

    public double middleMm() {
        return (bottomMm + topMm) / 2;
    }
}
