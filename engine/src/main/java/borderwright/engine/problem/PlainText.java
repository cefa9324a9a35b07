package borderwright.engine.problem;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** A code whose sentences are its values. */
record PlainText(String name) implements MessageCode {
    @Override
    public List<Slot> slots() {
        return List.of(Slot.text("what"), Slot.text("right"));
    }

    @Override
    public String key() {
        return name;
    }
}
