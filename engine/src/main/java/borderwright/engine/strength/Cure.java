package borderwright.engine.strength;

/**
 * One way to build a box, and how it stands.
 *
 * @param words what it is, for a builder
 * @param walls section of the walls
 * @param braceSpacingMm greatest distance between uprights along a side, mm; beyond the longest side for none
 * @param tieSpacingMm greatest distance between ties, mm; 0 for none
 * @param tieBelowRimMm how far the top of a tie lies below the rim, mm
 * @param cost of its pieces and screws, in the money of the prices given; not a basket
 * @param bowMm greatest final bow of its sides, mm; as far as it was looked into where it is far over the limit
 * @param worst greatest of the bow over its limit and of all uses; at most 1 holds
 */
public record Cure(
        String words,
        String walls,
        double braceSpacingMm,
        double tieSpacingMm,
        double tieBelowRimMm,
        double cost,
        double bowMm,
        double worst) {
    public boolean holds() {
        return worst <= 1;
    }
}
