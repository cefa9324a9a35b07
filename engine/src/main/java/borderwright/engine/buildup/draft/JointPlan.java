package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.message.Message;

/**
 * A joint as it is settled while pieces are placed; its screws are placed when all pieces are.
 *
 * @param hold which joint
 * @param use what it holds
 * @param screw or what takes its place
 * @param side index of the side; of a divider its own index; of a lap or a corner the side that begins there
 * @param through label under the heads; of a divider its planter; empty for boards of the side
 * @param into label of what the screws end in; empty for boards of the side
 */
public record JointPlan(Hold hold, Message use, Screw screw, int side, String through, String into) {}
