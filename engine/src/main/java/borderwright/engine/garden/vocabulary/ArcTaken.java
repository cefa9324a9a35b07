package borderwright.engine.garden.vocabulary;

/** How a curved edge was measured. */
public enum ArcTaken {
    @Described("square off the straight line between the two corners")
    SQUARE_OFF,
    @Described("with a tape along the wall from corner to corner")
    ALONG_THE_WALL
}
