package borderwright.engine.geometry;

/**
 * An upright prism: a plan polygon between two heights.
 *
 * <p>See docs/decisions/0002.
 *
 * @param plan outline seen from above, mm
 * @param bottomMm height of its underside above the garden's datum, mm
 * @param topMm height of its top, mm, above {@code bottomMm}
 */
public record Prism(Ring plan, double bottomMm, double topMm) {
    public Prism {
        if (!(topMm > bottomMm)) {
            throw new IllegalArgumentException("a prism needs a height, got " + bottomMm + " to " + topMm + " mm");
        }
    }

    public double heightMm() {
        return topMm - bottomMm;
    }

    public double volumeMm3() {
        return plan.areaMm2() * heightMm();
    }
}
