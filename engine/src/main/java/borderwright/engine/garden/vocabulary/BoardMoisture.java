package borderwright.engine.garden.vocabulary;

/** How wet a board arrives. */
public enum BoardMoisture {
    @Described("freshly sawn or freshly treated: it will shrink in width and thickness")
    WET,
    @Described("dried, 20 % or less")
    DRY
}
