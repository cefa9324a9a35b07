package borderwright.engine.garden.vocabulary;

/** How a board's faces are finished. */
public enum BoardSurface {
    @Described("as it leaves the saw")
    ROUGH,
    @Described("planed or dressed")
    PLANED
}
