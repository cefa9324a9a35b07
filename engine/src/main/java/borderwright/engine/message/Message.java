package borderwright.engine.message;

import java.util.List;

/**
 * Something to tell: a code and the values of its slots.
 *
 * @param code which sentence
 * @param values one for each slot of the code, in their order
 */
public record Message(MessageCode code, List<Object> values) {
    public Message {
        values = List.copyOf(values);
        List<Slot> slots = code.slots();
        if (values.size() != slots.size()) {
            throw new IllegalArgumentException(
                    code.key() + " has " + slots.size() + " slots, got " + values.size() + " values: " + values);
        }
        for (int i = 0; i < slots.size(); i++) {
            if (!slots.get(i).kind().takes(values.get(i))) {
                throw new IllegalArgumentException(code.key() + ": the slot " + slots.get(i) + " cannot take "
                        + values.get(i) + " of " + values.get(i).getClass());
            }
        }
    }

    /** The code's key in the message files. */
    public String key() {
        return code.key();
    }
}
