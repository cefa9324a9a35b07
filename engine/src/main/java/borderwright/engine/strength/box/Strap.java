package borderwright.engine.strength.box;

import borderwright.engine.strength.timber.FastenerJoint;

/**
 * A strap of bent steel across the two uprights of a corner in one course.
 *
 * @param corner index of the corner
 * @param heightMm height of its course's middle
 * @param leg one screw of a leg
 * @param count screws in a leg
 * @param item the screws' name on the shopping list
 * @param first index of its spring in one direction
 * @param second index of its spring square to that
 */
public record Strap(int corner, double heightMm, FastenerJoint leg, int count, String item, int first, int second) {}
