package borderwright.engine.survey.fieldbook;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Short names of readings, by the points between which they were taken. */
public enum ReadingMessage implements MessageCode {
    READING_TAPE(text("line")),
    READING_ANGLE(text("points")),
    READING_ALONG_BASELINE(text("point"), text("baseline")),
    READING_OFF_BASELINE(text("point"), text("baseline")),
    READING_IN_CHAIN(text("line"), text("chain")),
    READING_STRAIGHT(text("point"), text("chain")),
    READING_LEVEL(text("point")),
    READING_RISE(text("line")),
    READING_WALL_TOP(text("wall")),
    READING_WALL_BOTTOM(text("wall")),
    READING_ARC(text("edge"), choice("taken"));

    private final List<Slot> slots;

    ReadingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
