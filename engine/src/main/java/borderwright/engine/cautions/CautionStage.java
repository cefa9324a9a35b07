package borderwright.engine.cautions;

/** Stages of the work that cautions are sorted by, in the order of the work. */
public enum CautionStage {
    BEFORE,
    HARD_GROUND,
    DIGGING,
    WOOD,
    SAWING,
    LIFTING,
    AFTER
}
