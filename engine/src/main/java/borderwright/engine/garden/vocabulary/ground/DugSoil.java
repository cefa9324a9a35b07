package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;

/** What is dug; it decides how far the spoil swells and what it weighs. */
public enum DugSoil {
    @Described("sand or sandy gravel")
    SAND,
    @Described("common earth or loam")
    EARTH,
    @Described("clay")
    CLAY
}
