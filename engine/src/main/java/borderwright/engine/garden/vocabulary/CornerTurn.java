package borderwright.engine.garden.vocabulary;

/** How a run turns a corner. */
public enum CornerTurn {
    @Described("one planter goes round the corner, its walls turning with the border")
    MITRED,
    @Described("the run ends square before the corner and a separate planter fills the wedge")
    INFILL,
    @Described("the run ends square before the corner and the wedge stays open, its size stated")
    LEAVE_OPEN
}
