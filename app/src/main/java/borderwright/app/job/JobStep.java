package borderwright.app.job;

import borderwright.engine.plan.PlanStage;

/** A step that a job begins with. */
public sealed interface JobStep {

    /**
     * A stage of the plan of one design. Designs are planned side by side: the stages of each come in order, those of several
     * mixed.
     *
     * @param design the garden's own plan is 0, then its variants in the order in which they were written
     * @param stage what is worked out now
     */
    record Planning(int design, PlanStage stage) implements JobStep {}

    /** The designs are laid side by side. */
    record Comparing() implements JobStep {}

    /** The files of the pack are made. */
    record MakingPack() implements JobStep {}
}
