package borderwright.engine.garden.vocabulary;

/** Which way a curved edge bulges. */
public enum ArcBulge {
    @Described("away from the border: the border gains ground")
    OUTWARD,
    @Described("into the border: the border loses ground")
    INWARD
}
