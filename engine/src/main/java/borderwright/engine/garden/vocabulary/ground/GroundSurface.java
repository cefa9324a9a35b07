package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;

/** What lies where the planters are to stand. */
public enum GroundSurface {
    @Described("bare earth or planting")
    BARE_EARTH,
    @Described("lawn: its turf is stripped first")
    LAWN,
    @Described("paving or concrete: nothing is dug, planters stand on feet")
    PAVING,
    @Described("a roof, balcony or deck: as paving, and its load limit decides")
    ROOF;

    /** Whether nothing can be dug there. */
    public boolean isHard() {
        return this == PAVING || this == ROOF;
    }
}
