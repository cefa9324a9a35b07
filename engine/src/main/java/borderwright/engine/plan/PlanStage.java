package borderwright.engine.plan;

import borderwright.engine.message.Message;

/** The stages of a plan, in their order. */
public enum PlanStage {
    SURVEY,
    LAYOUT,
    BUILDING,
    SITE,
    BUYING,
    EXPLAINING,
    CUTTING,
    SEQUENCE;

    /** What a listener hears as the stage begins. */
    public Message begins() {
        return PlanStageMessage.STAGE_BEGINS.of(this);
    }
}
