package borderwright.engine.garden.vocabulary;

/** Rules for timber and screws. */
public enum TimberRules {
    @Described("EN 1995-1-1, out of doors")
    EUROCODE,
    @Described("the NDS, wet service")
    NDS
}
