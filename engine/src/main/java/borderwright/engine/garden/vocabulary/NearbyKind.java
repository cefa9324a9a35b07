package borderwright.engine.garden.vocabulary;

/** What it is. */
public enum NearbyKind {
    @Described("a tree, with its `trunk`: nothing is dug among its roots")
    TREE,
    @Described("a gas pipe")
    GAS,
    @Described("an electricity cable")
    ELECTRICITY,
    @Described("a water pipe")
    WATER,
    @Described("a telephone or data cable")
    TELEPHONE,
    @Described("a drain or its cover")
    DRAIN,
    @Described("an air brick or vent, with its `bottom`: air must reach it")
    AIR_BRICK,
    @Described("cladding or render that must stay dry, with its `bottom`")
    CLADDING;

    /** Whether it lies in the ground and belongs to who supplies it. */
    public boolean isService() {
        return this == GAS || this == ELECTRICITY || this == WATER || this == TELEPHONE || this == DRAIN;
    }

    /** Whether a struck one can kill. */
    public boolean canKill() {
        return this == GAS || this == ELECTRICITY;
    }
}
