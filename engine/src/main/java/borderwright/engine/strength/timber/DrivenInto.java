package borderwright.engine.strength.timber;

/** Which grain of the timber that it ends in a screw or nail is driven into. */
public enum DrivenInto {
    /** Across the grain. */
    SIDE_GRAIN,
    /** Along the grain. */
    END_GRAIN
}
