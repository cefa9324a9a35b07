package borderwright.engine.assembly;

/**
 * A capping board on top of a wall.
 *
 * @param label its mark
 * @param outer its ends along its outer edge
 * @param inner its ends along its inner edge
 * @param behind its two edges behind the wall's outside face: the first is negative, its overhang
 * @param height of its two faces above the wall's bottom edge
 */
public record BenchCap(String label, Span outer, Span inner, Span behind, Span height) {
    /** The same board of which only a part is shown. */
    public BenchCap withOuter(Span shown) {
        return new BenchCap(label, shown, inner, behind, height);
    }
}
