package borderwright.engine.assembly;

import borderwright.engine.message.Message;
import java.util.List;

/**
 * The floor of one planter, or the part of it whose slats run one way, seen from above.
 *
 * @param box name of its box
 * @param planter it lies in
 * @param hook where the tape hooks, in words
 * @param face the plan: the tape hooks in an inner corner of the walls and runs along the slats
 * @param strips legs, bearers and slats, each from the hook outwards
 * @param fixings through slats and bearers
 */
public record FloorBench(
        String box, String planter, Message hook, WorkFace face, List<FloorStrip> strips, List<FixingLine> fixings) {
    public FloorBench {
        strips = List.copyOf(strips);
        fixings = List.copyOf(fixings);
    }
}
