package borderwright.engine.strength.bracing;

/** How far apart braces and ties stand in a search. */
enum SpacingChoice {
    /** As the rules give it, where they do. */
    AS_GIVEN,
    /** As far as holds. */
    SEARCHED
}
