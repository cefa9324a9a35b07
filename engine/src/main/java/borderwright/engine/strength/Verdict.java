package borderwright.engine.strength;

import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/**
 * What is known of a box's strength. There is no fourth verdict, and none is given by default.
 *
 * @param kind which of the three
 * @param reasons with figures, or what is missing; at least one
 */
public record Verdict(Kind kind, List<Message> reasons) {
    public Verdict {
        reasons = List.copyOf(reasons);
        if (reasons.isEmpty()) {
            throw new IllegalArgumentException("a verdict needs a reason: " + kind);
        }
    }

    /** The three verdicts. */
    public enum Kind implements MessageCode {
        HOLDS,
        DOES_NOT_HOLD,
        NOT_SHOWN_TO_HOLD;

        private static final String CODE = "verdict-";

        @Override
        public List<Slot> slots() {
            return List.of();
        }

        @Override
        public String key() {
            return CODE + MessageCode.super.key();
        }
    }

    /** The verdict with all its reasons. */
    public Message message() {
        return StrengthMessage.VERDICT.of(kind.of(), reasons);
    }
}
