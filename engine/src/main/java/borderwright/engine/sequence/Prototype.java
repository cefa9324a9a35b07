package borderwright.engine.sequence;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import java.util.List;

/**
 * What is built first, alone, to learn from: the first box with a single planter; where all are joined, the first bay of the first
 * run if its boards end at its divider, else that box whole.
 *
 * <p>See docs/decisions/0065.
 *
 * @param box index of the box
 * @param name what it is called
 * @param share of the box's cutting and building that it takes
 */
public record Prototype(int box, String name, double share) {
    /** Boards longer than this many bays run past a divider. */
    private static final double PAST_A_BAY = 1.5;

    /** Chosen among boxes, at least one, in plan order. */
    public static Prototype of(List<Box> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).plan().planters().size() == 1) {
                return new Prototype(i, boxes.get(i).plan().name(), 1);
            }
        }
        Box first = boxes.get(0);
        List<String> planters = first.plan().planters();
        return standsAlone(first)
                ? new Prototype(0, planters.get(0), 1.0 / planters.size())
                : new Prototype(0, first.plan().name(), 1);
    }

    private static boolean standsAlone(Box box) {
        double bayMm =
                box.plan().outline().longestSideMm() / box.plan().planters().size();
        return box.pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.WALL)
                .allMatch(piece -> piece.length().mm() < PAST_A_BAY * bayMm);
    }
}
