package borderwright.engine.problem;

import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;

/**
 * One fault in what a person gave, or one thing that cannot be met, as a place and a message that they can act on. The message's
 * template tells what is wrong, with the value found and its unit; a template of the same key with {@code .right} tells what
 * would be right, where the first does not.
 *
 * <p>See docs/decisions/0001.
 *
 * @param where field path in the garden document, such as {@code survey.measures[3].reads}; empty for the whole document
 * @param message what is wrong
 */
public record Problem(String where, Message message) {
    /** Stable short name of the kind of problem, the key of its message. */
    public String code() {
        return message.key();
    }

    /** What is wrong, without what would be right. */
    public String what(Sentences sentences) {
        return sentences.text(message);
    }

    /** What would be right; empty where what is wrong already tells. */
    public String right(Sentences sentences) {
        return sentences.right(message);
    }

    /** What is wrong and what would be right, without the place. */
    public String sentence(Sentences sentences) {
        return sentences.sentence(message);
    }
}
