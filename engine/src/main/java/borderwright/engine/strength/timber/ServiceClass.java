package borderwright.engine.strength.timber;

/** How damp timber stands in use (EN 1995-1-1 2.3.1.3). */
public enum ServiceClass {
    /** Heated rooms. */
    SC1,
    /** Under a roof, not heated. */
    SC2,
    /** In the rain or against wet soil. */
    SC3
}
