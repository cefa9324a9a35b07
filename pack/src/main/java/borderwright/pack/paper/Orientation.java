package borderwright.pack.paper;

/** Which way a page lies. */
public enum Orientation {
    PORTRAIT,
    LANDSCAPE
}
