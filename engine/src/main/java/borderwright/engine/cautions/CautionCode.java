package borderwright.engine.cautions;

/** What is to be careful of. */
public enum CautionCode {
    BOUNDARY_AND_PERMITS,
    /** Stop: walls are higher than the limit, and any wall that retains is for an engineer. Found: the tallest, mm. */
    ENGINEER_FOR_TALL_WALLS,
    /** Stop: any wall that retains is for an engineer. */
    ENGINEER_FOR_RETAINING_WALLS,
    /** Limit: how far soil stays below the damp-proof course, mm. */
    SOIL_BELOW_DAMP_COURSE,
    FENCE_CARRIES_NO_SOIL,
    ROOF_LOAD_LIMIT,
    RUN_OFF,
    DIG_ENQUIRY,
    /** A service in the ground. Found: its depth, mm, where it was given. */
    SERVICE_NEAR,
    /** A tree. Limit: how far around its trunk the ground is left, mm. */
    TREE_ROOTS,
    FOOTINGS_AND_ROOTS,
    STRUCK_MAIN,
    TAMPER,
    TREATED_BOARDS,
    FOOD_BESIDE_TREATED_WOOD,
    RECLAIMED_WOOD,
    SAW_MANUAL,
    ROUGH_BOARDS,
    FREEHAND_CUTS,
    NAILER,
    SCREW_POINTS,
    /** Some piece is heavier than one person lifts. Limit: that weight, kg. */
    TWO_PEOPLE_LIFT,
    /** No piece is heavier than one person lifts. Limit: that weight, kg. */
    ASK_FOR_HELP,
    PROP_WALLS,
    ON_THE_ROAD,
    TIES_BEFORE_SOIL,
    BAGS_AND_DUST,
    FINISH_RAGS,
    YEARLY_LOOK
}
