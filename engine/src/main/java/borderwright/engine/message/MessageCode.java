package borderwright.engine.message;

import java.util.List;
import java.util.Locale;

/** A code of the message catalogue. Each room declares its codes in an enum, each with the slots of its sentence. */
public interface MessageCode {
    /** The name of the enum constant. */
    String name();

    /** What the sentence has places for, in the order in which values are given. */
    List<Slot> slots();

    /** The key in the message files: the name in lower case with hyphens, unique over all rooms. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * A message of this code.
     *
     * @param values one for each slot, in their order; each of the type that the kind of its slot asks for
     */
    default Message of(Object... values) {
        return new Message(this, List.of(values));
    }
}
