package borderwright.app.form;

import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the command {@code form} answers. */
enum FormCommandMessage implements MessageCode {
    FORM_FOLDER_IS_A_FILE(text("path")),
    FORM_WRITTEN(text("path"));

    private final List<Slot> slots;

    FormCommandMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
