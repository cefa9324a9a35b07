package borderwright.engine.layout.run;

/** What becomes of a run where two of its legs meet. */
public enum JointKind {
    /** The planter there goes round a slight bend: a facet of a curve, or a nearly straight corner. */
    BEND,
    /** A corner planter goes round. */
    MITRED,
    /** Both ends are square and a planter of its own fills the wedge. */
    INFILL,
    /** Both ends are square and the wedge stays open. */
    GAP,
    /** One of the legs takes no planters: the other ends as a run does. */
    NONE
}
