package borderwright.engine.assembly;

import borderwright.engine.buildup.parts.Piece;

/**
 * A tie or a board of a divider where it meets the inner face of a wall.
 *
 * @param label its mark
 * @param role tie or divider
 * @param inner its two edges on the wall's inner face
 * @param height of its edges above the bottom edge
 */
public record BenchCrosspiece(String label, Piece.Role role, Span inner, Span height) {}
