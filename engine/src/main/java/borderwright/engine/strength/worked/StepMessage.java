package borderwright.engine.strength.worked;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What every worked sheet needs: a formula, and where a line comes from. */
public enum StepMessage implements MessageCode {
    /** A formula in symbols and figures. */
    FORMULA(text("formula")),
    /** A clause, an equation or a table. */
    REFERENCE(text("reference")),
    COMMON_PRACTICE,
    CAREFUL_DEFAULT,
    DECLARED,
    DECLARED_BY_ITS_MAKER;

    private static final String CODE = "step-";

    private final List<Slot> slots;

    StepMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }

    @Override
    public String key() {
        return CODE + MessageCode.super.key();
    }
}
