package borderwright.app.usage;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.further;
import static borderwright.engine.message.Slot.list;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What is said of wrong use and of a computer that gives up. */
enum UsageMessage implements MessageCode {
    COMMAND_UNKNOWN(text("command"), further("perhaps"), list("commands")),
    OPTION_UNKNOWN(text("command"), text("option"), further("perhaps")),
    ARGUMENT_TOO_MANY(text("command"), text("argument")),
    OPTION_MISSING(text("command"), list("options")),
    OPTION_WITHOUT_VALUE(text("option"), text("value")),
    OPTION_TWICE(text("option")),
    OPTION_NOT_A_NUMBER(text("option"), text("given"), text("example")),
    OPTION_NOT_A_WHOLE_NUMBER(text("option"), text("given")),
    OPTION_NOT_A_CHOICE(text("option"), text("given"), list("choices")),
    OPTION_NOT_A_PATH(text("given")),
    OPTION_WRONG(text("option"), text("what")),
    SEE_HELP(text("command")),
    /** {@code why} is one of {@link FileTrouble.Why}. */
    FILE_TROUBLE(text("path"), choice("why")),
    FILE_TROUBLE_OF_ANOTHER_KIND(text("path"), text("why"));

    private final List<Slot> slots;

    UsageMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
