package borderwright.engine.garden.vocabulary;

/** How a tape was held. */
public enum TapeHeld {
    @Described("level: the length is horizontal")
    LEVEL,
    @Described("along the ground: the length is reduced by the levels of its ends")
    ALONG_THE_GROUND
}
