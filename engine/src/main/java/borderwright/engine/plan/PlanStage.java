package borderwright.engine.plan;

/** The stages of a plan, in their order. */
public enum PlanStage {
    SURVEY,
    LAYOUT,
    BUILDING,
    SITE,
    BUYING,
    EXPLAINING,
    CUTTING,
    SEQUENCE
}
