package borderwright.engine.buildup.draft;

/** Where a strap round the inner corner of a side above 180 degrees is screwed to its board, and where the post begins. */
public final class StrapLegs {
    /**
     * Distances of a leg's screws from the outer corner: three and eight diameters of a 4 mm screw, so five apart along the
     * grain (EN 1995-1-1 table 8.2, drilled) and, the inner face reaching further than the outer, more than seven from the
     * end that its point is near.
     */
    public static final double FIRST_MM = 12;

    public static final double SECOND_MM = 32;

    /** Room for the end of the leg (common practice, no source). */
    public static final double POST_MM = 44;

    /** Room for the strap and the heads of its screws (common practice, no source). */
    public static final double THICK_MM = 8;

    private StrapLegs() {}
}
