package borderwright.engine.strength.soil;

/**
 * Narrow fill between two walls: part of its weight hangs on their friction, so it pushes less (Janssen's arching).
 *
 * <p>Only as a stated option: fresh, loose, wet or shaken fill does not arch.
 *
 * @param widthM between the walls
 * @param unitWeightKnPerM3 of the fill
 * @param coefficient horizontal over vertical pressure
 * @param delta friction angle between wall and fill, radians, above 0
 */
public record Janssen(double widthM, double unitWeightKnPerM3, double coefficient, double delta) {
    public Janssen {
        if (!(widthM > 0 && delta > 0 && coefficient > 0)) {
            throw new IllegalArgumentException("width, coefficient and wall friction are above 0, got " + widthM + ", "
                    + coefficient + ", " + delta);
        }
    }

    /** Horizontal pressure at a depth, kN/m2. */
    public double pressure(double depthM) {
        double tan = StrictMath.tan(delta);
        return unitWeightKnPerM3 * widthM / (2 * tan) * (1 - StrictMath.exp(-2 * coefficient * depthM * tan / widthM));
    }

    /** This over the pressure of wide fill, at most 1. */
    public double relief(double depthM) {
        return depthM <= 0 ? 1 : pressure(depthM) / (coefficient * unitWeightKnPerM3 * depthM);
    }
}
