package borderwright.engine.strength.timber;

/**
 * Yield limit equations for one shear plane, NDS table 12.3.1A; lb, in, psi.
 *
 * @param im bearing in the main member, lb
 * @param is bearing in the side member
 * @param ii both bear, the fastener turns
 * @param iiim hinge in the main member's favour
 * @param iiis hinge in the side member's favour
 * @param iv two hinges
 */
public record NdsYield(double im, double is, double ii, double iiim, double iiis, double iv) {

    /**
     * A dowel below 1/4 in diameter, for which one reduction term holds for all modes.
     *
     * @param dIn diameter
     * @param mainIn bearing length in the main member
     * @param sideIn bearing length in the side member
     * @param fem bearing strength of the main member, psi
     * @param fes bearing strength of the side member, psi
     * @param fyb bending yield strength of the dowel, psi
     * @param kd reduction term: see {@link #reduction}
     */
    public static NdsYield of(double dIn, double mainIn, double sideIn, double fem, double fes, double fyb, double kd) {
        double re = fem / fes;
        double rt = mainIn / sideIn;
        double k1 =
                (Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
        double k2 = -1 + Math.sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * dIn * dIn / (3 * fem * mainIn * mainIn));
        double k3 = -1 + Math.sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * dIn * dIn / (3 * fem * sideIn * sideIn));
        return new NdsYield(
                dIn * mainIn * fem / kd,
                dIn * sideIn * fes / kd,
                k1 * dIn * sideIn * fes / kd,
                k2 * dIn * mainIn * fem / ((1 + 2 * re) * kd),
                k3 * dIn * sideIn * fem / ((2 + re) * kd),
                dIn * dIn / kd * Math.sqrt(2 * fem * fyb / (3 * (1 + re))));
    }

    /** Bearing strength of thin sheet steel, ASTM A653 grade 33, psi (note to NDS tables 12N and 12P; from memory). */
    public static final double STEEL_PSI = 61_850;

    /** Reference lateral design value Z, lb. */
    public double z() {
        return Math.min(Math.min(Math.min(im, is), ii), Math.min(Math.min(iiim, iiis), iv));
    }

    /** Table 12.3.1B below 1/4 in. */
    public static double reduction(double dIn) {
        return dIn <= 0.17 ? 2.2 : 10 * dIn + 0.5;
    }

    /** Dowel bearing strength below 1/4 in: 16600 G^1.84, psi (12.3.3; from memory). */
    public static double bearing(double g) {
        return 16600 * StrictMath.pow(g, 1.84);
    }

    /** Bending yield strength of nails and screws by diameter, psi (table I1). */
    public static double bendingYield(double dIn) {
        if (dIn <= 0.142) {
            return 100_000;
        }
        if (dIn <= 0.177) {
            return 90_000;
        }
        if (dIn <= 0.236) {
            return 80_000;
        }
        return dIn <= 0.273 ? 70_000 : dIn <= 0.344 ? 60_000 : 45_000;
    }
}
