package borderwright.engine.garden.vocabulary;

/** Left or right of a direction of view. */
public enum LeftOrRight {
    @Described("to the left")
    LEFT,
    @Described("to the right")
    RIGHT
}
