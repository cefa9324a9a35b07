package borderwright.engine.assembly;

import borderwright.engine.buildup.parts.Piece;

/**
 * A post or brace behind a wall or beside a divider.
 *
 * @param label its mark
 * @param role post or brace
 * @param face its two edges where it lies against the boards
 * @param back its two edges on its far side; other than {@code face} where an edge is ripped
 * @param height of its ends above the bottom edge; its foot below 0 where it is let into the ground
 * @param depthMm how far it stands off the boards, mm
 * @param place where it lies
 */
public record BenchUpright(
        String label, Piece.Role role, Span face, Span back, Span height, double depthMm, Place place) {
    /** Where an upright lies. */
    public enum Place {
        /** Behind the boards, screwed to them at the bench. */
        CARRIED,
        /** Behind the boards, but carried by a neighbouring wall; screwed when the two are put together. */
        NEIGHBOURS,
        /** On the near side of a divider. */
        NEAR_SIDE,
        /** On the far side of a divider. */
        FAR_SIDE
    }
}
