package borderwright.engine.garden.vocabulary;

/** Kind of saw. */
public enum SawKind {
    @Described("a table saw with a crosscut sled or mitre gauge")
    TABLE_SAW,
    @Described("a mitre saw")
    MITRE_SAW,
    @Described("a circular saw with a guide")
    CIRCULAR_SAW,
    @Described("a handsaw with a guide or bench hook")
    HANDSAW
}
