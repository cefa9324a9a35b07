package borderwright.engine.garden.checks;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What does not fit together in a run of planters. */
enum RunMessage implements MessageCode {
    RUN_WITHOUT_SIZE(text("run")),
    RUN_SIZE_TWICE(text("run")),
    RUN_SIZE_RANGE(text("run")),
    FALSE_FLOOR_TOO_HIGH(text("run")),
    ROWS_OF_SEVERAL_EDGES(text("run")),
    ROWS_WITH_BACK_GAP(text("run")),
    RUN_OF_ONE_CORNER,
    RUN_EDGE_TWICE(text("edge")),
    RUN_TURNS_NOWHERE(text("corner")),
    RUN_TURNS_ELSEWHERE(text("corner"), commas("turns")),
    RUN_CORNER_TWICE(text("corner"));

    private final List<Slot> slots;

    RunMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
