package borderwright.app.job;

import borderwright.engine.message.Message;

/** A step that a job begins with. */
public sealed interface JobStep {

    /**
     * Part of the plan of one design. Designs are planned side by side: the stages of each come in order, those of several
     * mixed.
     *
     * @param design the garden's own plan is 0, then its variants in the order in which they were written
     * @param step what is worked out now: a stage as it begins, or a step of a long one
     */
    record Planning(int design, Message step) implements JobStep {}

    /** The designs are laid side by side. */
    record Comparing() implements JobStep {}

    /** The files of the pack are made. */
    record MakingPack() implements JobStep {}
}
