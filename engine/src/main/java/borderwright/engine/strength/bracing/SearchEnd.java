package borderwright.engine.strength.bracing;

/** How a search for the least cure ended. */
public enum SearchEnd {
    /** All ways that could be cheaper were looked into. */
    WHOLE,
    /** The work allowed ran out first: a way that was not looked into may hold and be cheaper. */
    CUT_SHORT
}
