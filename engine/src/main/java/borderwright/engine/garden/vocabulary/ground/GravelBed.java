package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;

/** Where gravel goes. */
public enum GravelBed {
    @Described("under the whole planter")
    WHOLE,
    @Described("in a strip under the walls only; roots may go down inside it")
    UNDER_WALLS,
    @Described("nowhere: the bottom boards lie on levelled ground")
    NONE
}
