package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;

/** What lies under the gravel. */
public enum FoundationSoil {
    @Described("bedrock")
    ROCK,
    @Described("gravel or sandy gravel")
    GRAVEL,
    @Described("sand, silty sand, clayey gravel")
    SAND,
    @Described("clay, sandy clay, silt")
    CLAY,
    @Described("made ground, topsoil, or nobody knows")
    UNKNOWN
}
