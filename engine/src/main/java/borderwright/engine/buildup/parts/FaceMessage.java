package borderwright.engine.buildup.parts;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Which face of a piece goes out or up, and how an edge is ripped. */
public enum FaceMessage implements MessageCode {
    HEART_SIDE_OUT,
    HEART_SIDE_UP,
    BARK_SIDE_OUT,
    BARK_SIDE_UP,
    BETTER_FACE_OUT,
    BETTER_FACE_UP,
    ANY_FACE_OF_UPRIGHT,
    ANY_FACE_UP,
    ANY_FACE_RISING_EDGE_UP,
    ANY_FACE_OF_TIE(text("side")),
    MARKED_FACE_TOWARDS(text("planter")),
    RIP_KEEPING_A_FACE(angle("tilt"), text("section"), piece("face")),
    RIP_LEAVING_PART(angle("tilt"), text("section"), piece("left"), piece("face"));

    private final List<Slot> slots;

    FaceMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
