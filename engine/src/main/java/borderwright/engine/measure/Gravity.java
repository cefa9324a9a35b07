package borderwright.engine.measure;

/** What weight pulls with. */
public final class Gravity {
    /** Standard acceleration, m/s2, by definition (ISO 80000-3): newtons that a kilogram presses with. */
    public static final double N_PER_KG = 9.80665;

    public static final double KN_PER_KG = N_PER_KG / 1000;

    private Gravity() {}
}
