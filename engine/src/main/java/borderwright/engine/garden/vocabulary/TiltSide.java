package borderwright.engine.garden.vocabulary;

/** To which side the top of a blade can lean, for a person who stands at the saw. */
public enum TiltSide {
    @Described("to the left only")
    LEFT,
    @Described("to the right only")
    RIGHT,
    @Described("to either side")
    BOTH
}
