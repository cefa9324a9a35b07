package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;

/** How a run follows a slope. */
public enum SlopeForm {
    @Described("one level for the whole run; the low end shows more wall")
    LEVEL,
    @Described("planters step down by whole courses")
    STEPPED
}
