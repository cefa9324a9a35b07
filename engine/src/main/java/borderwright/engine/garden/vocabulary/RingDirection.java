package borderwright.engine.garden.vocabulary;

/** Which way round the corners are named. */
public enum RingDirection {
    @Described("anticlockwise: walking from corner to corner, the border is on the left")
    ANTICLOCKWISE,
    @Described("clockwise: walking from corner to corner, the border is on the right")
    CLOCKWISE
}
