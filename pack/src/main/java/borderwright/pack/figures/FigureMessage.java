package borderwright.pack.figures;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Figures whose unit is a word. */
enum FigureMessage implements MessageCode {
    LIQUID_IN_LITRES(text("litres")),
    LIQUID_IN_QUARTS(text("quarts"), text("litres"));

    private final List<Slot> slots;

    FigureMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
