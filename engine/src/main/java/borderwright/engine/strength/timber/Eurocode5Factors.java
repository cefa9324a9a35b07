package borderwright.engine.strength.timber;

/** Factors of EN 1995-1-1:2004+A1:2008 for solid timber. */
public final class Eurocode5Factors {
    /** Partial factor for solid timber and, from memory, for connections (table 2.3). */
    public static final double GAMMA_M = 1.3;

    /** Share of the width that counts in shear because of cracks, solid timber (6.1.7(2), A1; from memory). */
    public static final double KCR = 0.67;

    /** Share of the lesser bending stress in bending both ways, rectangles (6.1.6(2)). */
    public static final double KM = 0.7;

    private Eurocode5Factors() {}

    /** Table 3.1, solid timber. */
    public static double kmod(ServiceClass service, LoadDuration duration) {
        boolean wet = service == ServiceClass.SC3;
        return switch (duration) {
            case PERMANENT -> wet ? 0.50 : 0.60;
            case LONG -> wet ? 0.55 : 0.70;
            case MEDIUM -> wet ? 0.65 : 0.80;
            case SHORT -> wet ? 0.70 : 0.90;
            case INSTANTANEOUS -> wet ? 0.90 : 1.10;
        };
    }

    /** Table 3.2, solid timber put in dry. */
    public static double kdef(ServiceClass service) {
        return switch (service) {
            case SC1 -> 0.60;
            case SC2 -> 0.80;
            case SC3 -> 2.00;
        };
    }

    /** The same for timber put in wet that dries under load: 1.0 more by 3.2(4) (from memory). */
    public static double kdefPutInWet(ServiceClass service) {
        return kdef(service) + 1.0;
    }

    /** Equation 3.1: small sections of timber up to 700 kg/m3 are stronger in bending and tension. */
    public static double kh(double depthMm, double rhoK) {
        return rhoK > 700 || depthMm >= 150 ? 1 : Math.min(StrictMath.pow(150 / depthMm, 0.2), 1.3);
    }

    /** Equations 6.21 to 6.29: what is left of compression strength along the grain for a pin-ended post. */
    public static double kc(double lengthMm, double thicknessMm, StrengthClass timber) {
        double slenderness = lengthMm * Math.sqrt(12) / thicknessMm;
        double relative = slenderness / StrictMath.PI * Math.sqrt(timber.fc0k() / timber.e005());
        if (relative <= 0.3) {
            return 1;
        }
        double k = 0.5 * (1 + 0.2 * (relative - 0.3) + relative * relative);
        return 1 / (k + Math.sqrt(k * k - relative * relative));
    }

    /** Clause 8.7.2(8) and 8.17: how many of n screws in a row count when pulled out together. */
    public static double effectiveNumber(int n) {
        return StrictMath.pow(n, 0.9);
    }
}
