package borderwright.app.exit;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What is written as the program ends early. */
enum ExitMessage implements MessageCode {
    STOPPED_BY_SIGNAL;

    @Override
    public List<Slot> slots() {
        return List.of();
    }
}
