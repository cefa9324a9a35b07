package borderwright.pack.pages;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What stands on every page. */
enum PageMessage implements MessageCode {
    FOOT_GUIDANCE,
    FOOT_INVENTED;

    @Override
    public List<Slot> slots() {
        return List.of();
    }
}
