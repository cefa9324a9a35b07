package borderwright.engine.survey;

import borderwright.engine.garden.vocabulary.EdgeKind;

/**
 * One edge of the border.
 *
 * @param kind what lies along it
 * @param gapMm gap to keep between it and any planter, mm: as given or by default, not counting the lean
 * @param leanMm how far its wall leans into the border at planter height beyond its line at the ground, mm, never
 *     negative: clearance uses the worse of top and bottom
 * @param riseMm for a curved edge, how far its middle stands off the chord, mm: positive outward (the border gains
 *     ground), negative inward; 0 for a straight edge
 */
public record OutlineEdge(EdgeKind kind, double gapMm, double leanMm, double riseMm) {
    public OutlineEdge {
        if (gapMm < 0 || leanMm < 0) {
            throw new IllegalArgumentException("gap and lean are not negative, got " + gapMm + ", " + leanMm + " mm");
        }
    }

    /** Whole distance to keep from the edge's line at the ground, mm. */
    public double clearanceMm() {
        return gapMm + leanMm;
    }
}
