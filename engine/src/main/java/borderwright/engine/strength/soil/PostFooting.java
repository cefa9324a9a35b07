package borderwright.engine.strength.soil;

import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.strength.worked.Working;

/**
 * A post let into the ground without being held at its surface: IBC 2012 1807.3.2.1, equation 18-1 (from memory), turned
 * round to the load that a given depth bears.
 *
 * <p>See docs/decisions/0043.
 *
 * @param depthM how deep it is let in
 * @param widthM width of the concrete round it
 * @param ground what it stands in
 */
public record PostFooting(double depthM, double widthM, FoundationSoil ground) {
    private static final double A_FACTOR = 2.34;
    private static final double ARM_FACTOR = 1.09;

    /** Depth beyond which the pressure no longer counts as growing, m (12 ft). */
    private static final double DEEPEST_M = 3.6576;

    /**
     * The bearing of the ground, N/mm for each mm of a post's movement and mm of its depth: order of Terzaghi 1955 for soft
     * ground and narrow posts, halved for what the ground gives way over the years (careful default, from memory).
     */
    public double stiffnessNPerMm2() {
        return switch (ground) {
            case ROCK -> 20;
            case GRAVEL -> 3;
            case SAND -> 2;
            case CLAY -> 1.5;
            case UNKNOWN -> 0.5;
        };
    }

    /**
     * How much of the ground's lateral bearing is used.
     *
     * @param shearKn at the ground's surface
     * @param momentKnM at the ground's surface
     */
    public double use(double shearKn, double momentKnM, Working working) {
        working.step("P", SoilStep.PUSH_AT_SURFACE, shearKn, "kN", "");
        working.step("P h", SoilStep.MOMENT_AT_SURFACE, momentKnM, "kNm", "");
        working.step("d", SoilStep.DEPTH, depthM, "m", "");
        working.step("b", SoilStep.WIDTH_OF_CONCRETE, widthM, "m", "");
        double s1 = working.step(
                "S1",
                SoilStep.LATERAL_BEARING,
                ground.lateralKnPerM3() * Math.min(depthM / 3, DEEPEST_M),
                "kN/m2",
                "IBC 2012 table 1806.2");
        if (s1 == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return working.step(
                "use",
                "2.34 (P d + 1.09 P h) / (S1 b d^2)",
                A_FACTOR * (shearKn * depthM + ARM_FACTOR * momentKnM) / (s1 * widthM * depthM * depthM),
                "",
                "IBC 2012 eq. 18-1");
    }
}
