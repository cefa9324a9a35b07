package borderwright.engine.sequence;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.number;
import static borderwright.engine.message.Slot.semicolons;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Tasks by name, and the days of the calendar. */
enum SequenceMessage implements MessageCode {
    /** A kind of task in a word or two. */
    TASK_KIND(choice("kind")),
    BOXES_NAMED(list("boxes")),
    BOXES_FROM_TO(text("first"), text("last")),
    ORDER_GOODS,
    SET_OUT_CORNERS(choice("mark")),
    DIG_FOR_BOXES(message("boxes")),
    BED_BOXES(choice("mark"), message("boxes")),
    CUT_FIRST(choice("part"), text("planter")),
    BUILD_FIRST(choice("part"), text("planter")),
    CUT_REST(choice("gaps")),
    BRUSH_COAT(count("coat"), count("coats")),
    BUILD_BOXES(choice("part"), message("boxes"), choice("gaps")),
    LINE_BOXES(message("boxes")),
    FILL_BOXES(message("boxes")),
    PLANT_AND_WATER,
    WORK_DOES_NOT_END,
    NUMBERED_TASK(count("number"), message("task")),
    DAY_SUMMARY(text("garden"), commas("kinds")),
    DAY_TASK(count("number"), message("task"), choice("state"), number("hours", 1)),
    DAY_NEEDS_DRY_WEATHER,
    DAY_IN_RAIN(semicolons("tasks")),
    RAIN_MOVES_THE_DAY,
    RAIN_LEAVES_TASKS(semicolons("tasks"));

    /** How much of a box, or of the boxes, is built. */
    enum Part {
        /** A box. */
        WHOLE,
        /** One bay of a box. */
        BAY,
        /** What the first bay leaves of its box. */
        REST
    }

    /** Whether the gaps between what stands and what comes next are measured again before cutting. */
    enum Gaps {
        AS_PLANNED,
        MEASURED_AGAIN
    }

    /** How far a task has come at the end of a day. */
    enum State {
        ENDS,
        GOES_ON
    }

    private final List<Slot> slots;

    SequenceMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
