package borderwright.engine.garden.vocabulary;

/** How a gardener works at a planter. */
public enum GardenerPosture {
    @Described("standing")
    STANDING,
    @Described("from a chair or wheelchair")
    SEATED,
    @Described("kneeling or bending")
    KNEELING
}
