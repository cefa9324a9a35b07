package borderwright.engine.strength;

import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.message.Message;

/**
 * One way to build a box, and how it stands.
 *
 * @param words what it is, for a builder
 * @param walls section of the walls
 * @param scheme how closely it is braced and tied
 * @param cost of its pieces and screws, in the money of the prices given; not a basket
 * @param bowMm greatest final bow of its sides, mm; as far as it was looked into where it is far over the limit
 * @param worst greatest of the bow over its limit and of all uses; at most 1 holds
 */
public record Cure(Message words, String walls, BracingScheme scheme, double cost, double bowMm, double worst) {
    public boolean holds() {
        return worst <= 1;
    }
}
