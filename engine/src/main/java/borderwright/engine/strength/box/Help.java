package borderwright.engine.strength.box;

import borderwright.engine.strength.timber.FastenerJoint;
import java.util.List;

/**
 * Screws that share load as far as they may and then give way: those of laps and of the capping.
 *
 * @param joint one of them
 * @param springs indices of their springs
 */
public record Help(FastenerJoint joint, List<Integer> springs) {
    public Help {
        springs = List.copyOf(springs);
    }
}
