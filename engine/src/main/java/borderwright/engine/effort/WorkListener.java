package borderwright.engine.effort;

import borderwright.engine.message.Message;

/** Hears what is being worked out, so that nobody waits in silence. No answer depends on it. */
@FunctionalInterface
public interface WorkListener {
    /** Hears nothing. */
    WorkListener NONE = step -> {};

    /**
     * A step of the work begins.
     *
     * @param step what is worked out now; may come from several threads, and hundreds of times a second. What this throws
     *     ends the work
     */
    void begins(Message step);
}
