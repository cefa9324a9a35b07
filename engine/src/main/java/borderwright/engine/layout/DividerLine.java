package borderwright.engine.layout;

import borderwright.engine.geometry.Point;

/**
 * The middle line of a divider, from the outer face of one side to the outer face of another.
 *
 * <p>On a straight stretch it is square to both sides. On a curve built in facets it may lie on the bisector of a bend
 * and end at corners of the outline on both sides: the index is then that of the side that starts at the corner.
 *
 * @param fromSide index of the side where it starts (the front)
 * @param from on that side's outer face, mm
 * @param toSide index of the side where it ends (the back)
 * @param to on that side's outer face, mm
 */
public record DividerLine(int fromSide, Point from, int toSide, Point to) {}
