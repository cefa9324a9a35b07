package borderwright.engine.strength.soil;

/** Horizontal over vertical pressure of soil; angles in radians, friction above 0. */
public final class EarthCoefficient {
    private EarthCoefficient() {}

    /** Jaky: 1 - sin phi, soil that has not moved. */
    public static double atRest(double phi) {
        return 1 - StrictMath.sin(phi);
    }

    /** Rankine, upright smooth wall, level fill that has given way. */
    public static double active(double phi) {
        double s = StrictMath.sin(phi);
        return (1 - s) / (1 + s);
    }

    /** Rankine, level fill that is pushed. */
    public static double passive(double phi) {
        return 1 / active(phi);
    }
}
