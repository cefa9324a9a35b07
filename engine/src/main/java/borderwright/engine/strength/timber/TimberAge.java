package borderwright.engine.strength.timber;

/** When the stiffness of timber and screws is taken. */
public enum TimberAge {
    /** As built. */
    NEW,
    /** After creep, under loads that stay. */
    CREPT
}
