package borderwright.engine.stock;

/** What may lie on one board together, beyond what sizes say; fewer pieces of what may lie together may do so too. */
public interface PatternRule {
    /** Whether a pattern can be cut. */
    boolean admits(CuttingPattern pattern);
}
