package borderwright.engine.strength.timber;

/**
 * Least distances of nails and of screws up to 6 mm, EN 1995-1-1 table 8.2, mm.
 *
 * @param alongMm a1, between fasteners along the grain
 * @param acrossMm a2, between them across the grain
 * @param loadedEndMm a3,t
 * @param freeEndMm a3,c
 * @param loadedEdgeMm a4,t
 * @param freeEdgeMm a4,c
 */
public record Spacings(
        double alongMm, double acrossMm, double loadedEndMm, double freeEndMm, double loadedEdgeMm, double freeEdgeMm) {

    /**
     * The table's distances for one fastener.
     *
     * @param dMm diameter
     * @param angle between force and grain, radians
     * @param predrilled whether holes are drilled
     * @param rhoK characteristic density, kg/m3
     */
    public static Spacings of(double dMm, double angle, boolean predrilled, double rhoK) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.abs(StrictMath.sin(angle));
        double flat = StrictMath.abs(cos);
        boolean thin = dMm < 5;
        double[] inDiameters;
        if (predrilled) {
            inDiameters = new double[] {4 + flat, 3 + sin, 7 + 5 * cos, 7, 3 + (thin ? 2 : 4) * sin, 3};
        } else if (rhoK <= 420) {
            inDiameters = new double[] {5 + (thin ? 5 : 7) * flat, 5, 10 + 5 * cos, 10, 5 + (thin ? 2 : 5) * sin, 5};
        } else {
            inDiameters = new double[] {7 + 8 * flat, 7, 15 + 5 * cos, 15, 7 + (thin ? 2 : 5) * sin, 7};
        }
        return new Spacings(
                inDiameters[0] * dMm,
                inDiameters[1] * dMm,
                inDiameters[2] * dMm,
                inDiameters[3] * dMm,
                inDiameters[4] * dMm,
                inDiameters[5] * dMm);
    }
}
