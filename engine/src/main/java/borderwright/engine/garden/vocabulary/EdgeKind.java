package borderwright.engine.garden.vocabulary;

/** What stands or lies along an edge of the border. */
public enum EdgeKind {
    @Described("a wall of a house or another heated building: keep a gap, stay below the damp course and air bricks")
    HOUSE,
    @Described("a free-standing or garden wall")
    WALL,
    @Described("a fence: never loaded, so the planter has its own back wall")
    FENCE,
    @Described("a hedge or shrubs")
    HEDGE,
    @Described("paving, a path or a patio")
    PAVING,
    @Described("lawn")
    LAWN,
    @Described("nothing: open ground or planting")
    OPEN;

    /** Whether a person can stand there to garden. */
    public boolean givesAccess() {
        return this == PAVING || this == LAWN || this == OPEN;
    }
}
