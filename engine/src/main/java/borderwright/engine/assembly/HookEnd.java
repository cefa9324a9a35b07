package borderwright.engine.assembly;

/** What the end that the tape hooks on is, on the face that is worked on. */
public enum HookEnd {
    /** A square end. */
    SQUARE,
    /** An end cut at an angle whose long point lies on this face. */
    LONG_POINT,
    /** An end cut at an angle whose short point lies on this face. */
    SHORT_POINT
}
