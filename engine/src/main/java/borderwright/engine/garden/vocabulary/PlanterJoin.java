package borderwright.engine.garden.vocabulary;

/** Whether neighbours share their end wall. */
public enum PlanterJoin {
    @Described("neighbours share one end wall, the divider")
    JOINED,
    @Described("each planter has walls of its own")
    SEPARATE
}
