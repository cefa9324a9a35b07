package borderwright.engine.assembly.order;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.message.Message;
import java.util.List;

/**
 * One step of putting a box together.
 *
 * @param number 1 first
 * @param kind of work
 * @param what is done
 * @param details what else to see to
 * @param pieces labels of those that are added
 * @param fixings that are driven
 * @param people who are needed
 */
public record AssemblyStep(
        int number,
        Kind kind,
        Message what,
        List<Message> details,
        List<String> pieces,
        List<StepFixing> fixings,
        int people) {
    public AssemblyStep {
        details = List.copyOf(details);
        pieces = List.copyOf(pieces);
        fixings = List.copyOf(fixings);
    }

    /** Kinds of work, in their order. */
    public enum Kind {
        LAY_WALL,
        STAND_WALL,
        JOIN_WALL,
        SQUARE,
        DIVIDERS,
        TIES,
        BEARERS,
        SLATS,
        CAPPING,
        LINING
    }

    /**
     * Fixings of one kind in a step.
     *
     * @param fixing which, and its holes
     * @param count how many of them in this step
     */
    public record StepFixing(Box.Fixing fixing, int count) {}
}
