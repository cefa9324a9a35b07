package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;

/** How the soil pushes. */
public enum SoilPush {
    @Described("as soil that has not moved: walls that hardly give way")
    AT_REST,
    @Described("less, as soil that follows walls which give way")
    ACTIVE
}
