package borderwright.engine.layout.plan;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.List;

/**
 * All boxes of a garden on the plan.
 *
 * @param boxes in build order along their runs
 * @param openings ground inside the border that stays open: gaps at corners, unreachable tips, access strips
 * @param notes what a person should know of it (reach, sag, steps), with figures
 * @param unmet requests that could not be met, with the reason and what would be right
 */
public record Layout(List<FootprintPlan> boxes, List<Opening> openings, List<Message> notes, List<Problem> unmet) {
    public Layout {
        boxes = List.copyOf(boxes);
        openings = List.copyOf(openings);
        notes = List.copyOf(notes);
        unmet = List.copyOf(unmet);
    }
}
