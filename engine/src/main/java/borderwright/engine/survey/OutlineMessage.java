package borderwright.engine.survey;

import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Why an adjusted border has no outline. */
enum OutlineMessage implements MessageCode {
    STRIP_TOO_DEEP(length("depth")),
    CORNERS_COINCIDE(text("one"), text("other")),
    ARC_TOO_HIGH(message("reading"), length("read"), length("chord"), length("most")),
    CURVE_BOTH_WAYS(message("reading")),
    CURVE_BEYOND_CHORD(message("reading"), length("along"), length("chord")),
    CURVE_SHORTER_THAN_CHORD(message("reading"), length("read"), length("chord")),
    CURVE_DISAGREES(message("reading"), length("read"), length("implied")),
    LEVEL_WITHOUT_PLACE(text("point"));

    private final List<Slot> slots;

    OutlineMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
