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

    /** Rankine with fill rising at {@code slope}; along the slope, on the upright plane. */
    public static double activeOnSlope(double phi, double slope) {
        double c = StrictMath.cos(slope);
        double root = Math.sqrt(c * c - StrictMath.pow(StrictMath.cos(phi), 2));
        return c * (c - root) / (c + root);
    }

    /** The passive counterpart of {@link #activeOnSlope}. */
    public static double passiveOnSlope(double phi, double slope) {
        double c = StrictMath.cos(slope);
        double root = Math.sqrt(c * c - StrictMath.pow(StrictMath.cos(phi), 2));
        return c * (c + root) / (c - root);
    }

    /**
     * Coulomb, active.
     *
     * @param phi friction of the soil
     * @param delta friction between wall and soil
     * @param lean of the wall's back from upright, positive where the fill stands over it
     * @param slope of the fill, positive rising from the wall
     */
    public static double coulombActive(double phi, double delta, double lean, double slope) {
        double root = Math.sqrt(StrictMath.sin(phi + delta)
                * StrictMath.sin(phi - slope)
                / (StrictMath.cos(lean + delta) * StrictMath.cos(lean - slope)));
        return square(StrictMath.cos(phi - lean))
                / (square(StrictMath.cos(lean)) * StrictMath.cos(lean + delta) * square(1 + root));
    }

    /** Coulomb, passive, the same arguments. */
    public static double coulombPassive(double phi, double delta, double lean, double slope) {
        double root = Math.sqrt(StrictMath.sin(phi + delta)
                * StrictMath.sin(phi + slope)
                / (StrictMath.cos(lean - delta) * StrictMath.cos(lean - slope)));
        return square(StrictMath.cos(phi + lean))
                / (square(StrictMath.cos(lean)) * StrictMath.cos(lean - delta) * square(1 - root));
    }

    private static double square(double x) {
        return x * x;
    }
}
