package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;

/** How wet the soil comes to be for a while. */
public enum SoilWater {
    @Described("never wetter than moist, as under a roof")
    MOIST,
    @Described("soaked by rain that runs off through the joints")
    SOAKED,
    @Described("water stands inside up to the surface, as behind a closed liner")
    WATERLOGGED,
    @Described("water stands inside and outside")
    FLOODED
}
