package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.strength.timber.FastenerJoint;

/**
 * The screws of one board at one upright, or of two uprights to each other in one course.
 *
 * @param kind which joint they make
 * @param fixed label of what lies under the heads
 * @param receiver label of what they end in
 * @param item the screw's name
 * @param joint resistance and stiffness of one
 * @param count how many share the force
 * @param across index of the spring that shears them
 * @param along index of the spring that pulls them when it lengthens
 * @param turn index of the spring by which they keep an upright square to a level board; -1 for none
 * @param leverMm distance between them up the board, mm
 */
public record ScrewGroup(
        Box.Hold kind,
        String fixed,
        String receiver,
        String item,
        FastenerJoint joint,
        int count,
        int across,
        int along,
        int turn,
        double leverMm) {}
