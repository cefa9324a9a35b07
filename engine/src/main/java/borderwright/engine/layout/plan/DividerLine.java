package borderwright.engine.layout.plan;

import borderwright.engine.geometry.Point;

/**
 * The middle line of a divider, from the outer face of one side to the outer face of another.
 *
 * <p>It is square to both sides, keeps the least edge from every corner of the box, and has the planter before it on its
 * right hand and the one after it on its left.
 *
 * @param fromSide index of the side where it starts: the front, but the back in a run whose corners were named against
 *     the border's own direction
 * @param from on that side's outer face, mm
 * @param toSide index of the side where it ends
 * @param to on that side's outer face, mm
 */
public record DividerLine(int fromSide, Point from, int toSide, Point to) {}
