package borderwright.engine.garden.vocabulary;

/** How the walls of a box meet at its corners. */
public enum CornerStyle {
    @Described("courses lap over each other in turn")
    LAPPED,
    @Described("both boards are cut to half the corner's angle")
    MITRED
}
