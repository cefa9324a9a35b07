package borderwright.engine.strength.box;

/**
 * A bent steel strap across the two uprights of a corner in one course.
 *
 * @param corner index of the corner
 * @param heightMm height of its course's middle
 * @param first index of its spring in one direction
 * @param second index of its spring square to that
 */
public record Strap(int corner, double heightMm, int first, int second) {}
