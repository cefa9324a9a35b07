package borderwright.engine.garden;

import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.unitWeight;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Who sets a value on which much depends. */
public enum OriginMessage implements MessageCode {
    SOAKED_WEIGHT_GIVEN(unitWeight("weight")),
    SOAKED_WEIGHT_BY_DEFAULT(unitWeight("weight"), text("source"));

    private final List<Slot> slots;

    OriginMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
