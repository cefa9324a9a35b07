package borderwright.engine.cautions;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;
import java.util.Locale;

/** Stages of the work that cautions are sorted by, in the order of the work. */
public enum CautionStage implements MessageCode {
    BEFORE,
    HARD_GROUND,
    DIGGING,
    WOOD,
    SAWING,
    LIFTING,
    AFTER;

    @Override
    public String key() {
        return "cautions-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public List<Slot> slots() {
        return List.of();
    }
}
