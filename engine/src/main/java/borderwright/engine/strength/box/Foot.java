package borderwright.engine.strength.box;

import borderwright.engine.strength.soil.PostFooting;
import java.util.List;

/**
 * The part of a post or brace that is let into the ground: a bar between springs at two depths, which resist a push and a
 * moment at the surface just as the ground along a stiff post does.
 *
 * @param label as written on the piece
 * @param footing what it stands in
 * @param springs of both directions at both depths
 */
public record Foot(String label, PostFooting footing, List<Spring> springs) {
    public Foot {
        springs = List.copyOf(springs);
    }

    /**
     * One spring to the ground.
     *
     * @param index in the frame
     * @param depthMm below the bed
     * @param isAcross whether along y instead of x
     */
    public record Spring(int index, double depthMm, boolean isAcross) {}
}
