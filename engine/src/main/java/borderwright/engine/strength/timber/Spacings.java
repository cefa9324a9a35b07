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
     * The table's distances for one fastener in a predrilled hole.
     *
     * @param dMm diameter
     * @param angle between force and grain, radians
     */
    public static Spacings predrilled(double dMm, double angle) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.abs(StrictMath.sin(angle));
        return new Spacings(4 + StrictMath.abs(cos), 3 + sin, 7 + 5 * cos, 7, 3 + (isThin(dMm) ? 2 : 4) * sin, 3)
                .times(dMm);
    }

    /**
     * The table's distances for one fastener without a hole.
     *
     * @param dMm diameter
     * @param angle between force and grain, radians
     * @param rhoK characteristic density, kg/m3
     */
    public static Spacings undrilled(double dMm, double angle, double rhoK) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.abs(StrictMath.sin(angle));
        double flat = StrictMath.abs(cos);
        boolean thin = isThin(dMm);
        Spacings inDiameters = rhoK <= 420
                ? new Spacings(5 + (thin ? 5 : 7) * flat, 5, 10 + 5 * cos, 10, 5 + (thin ? 2 : 5) * sin, 5)
                : new Spacings(7 + 8 * flat, 7, 15 + 5 * cos, 15, 7 + (thin ? 2 : 5) * sin, 7);
        return inDiameters.times(dMm);
    }

    private static boolean isThin(double dMm) {
        return dMm < 5;
    }

    private Spacings times(double dMm) {
        return new Spacings(
                alongMm * dMm,
                acrossMm * dMm,
                loadedEndMm * dMm,
                freeEndMm * dMm,
                loadedEdgeMm * dMm,
                freeEdgeMm * dMm);
    }
}
