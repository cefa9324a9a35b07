package borderwright.engine.strength.timber;

/** Adjustment factors of NDS Supplement table 4A for dimension lumber; sizes in inches, as dressed. */
public final class NdsFactors {
    private NdsFactors() {}

    /** CF for bending, No.3 and better. */
    public static double sizeInBending(double thicknessIn, double widthIn) {
        boolean thick = thicknessIn > 3;
        if (widthIn < 5) {
            return widthIn > 4 ? 1.4 : 1.5;
        }
        if (widthIn <= 6) {
            return 1.3;
        }
        if (widthIn <= 8) {
            return thick ? 1.3 : 1.2;
        }
        if (widthIn <= 10) {
            return thick ? 1.2 : 1.1;
        }
        if (widthIn <= 12) {
            return thick ? 1.1 : 1.0;
        }
        return thick ? 1.0 : 0.9;
    }

    /** CF for compression along the grain. */
    public static double sizeInCompression(double widthIn) {
        if (widthIn <= 4) {
            return 1.15;
        }
        if (widthIn <= 6) {
            return 1.1;
        }
        if (widthIn <= 8) {
            return 1.05;
        }
        return widthIn <= 12 ? 1.0 : 0.9;
    }

    /** Cfu: dressed lumber laid flat. */
    public static double flatUse(double thicknessIn, double widthIn) {
        boolean thick = thicknessIn > 3;
        if (widthIn < 3.5) {
            return 1.0;
        }
        if (widthIn < 5) {
            return thick ? 1.0 : 1.1;
        }
        if (widthIn < 9) {
            return thick ? 1.05 : 1.15;
        }
        return thick ? 1.1 : 1.2;
    }

    /** CM for bending: none below 1150 psi. */
    public static double wetInBending(double fbTimesCf) {
        return fbTimesCf <= 1150 ? 1.0 : 0.85;
    }

    /** CM for compression along the grain: none below 750 psi. */
    public static double wetInCompression(double fcTimesCf) {
        return fcTimesCf <= 750 ? 1.0 : 0.8;
    }

    public static final double WET_IN_SHEAR = 0.97;
    public static final double WET_ACROSS = 0.67;
    public static final double WET_STIFFNESS = 0.9;

    /** CM for joints in wet service (table 11.3.3; from memory): lateral and wood screws pulled. */
    public static final double WET_JOINT = 0.7;

    /** CM for nails pulled in wet service (table 11.3.3; from memory). */
    public static final double WET_NAIL_PULLED = 0.25;

    /** Ceg: lateral load in end grain (12.5.2.2; from memory). */
    public static final double END_GRAIN_LATERAL = 0.67;

    /** Equation 3.7-1: CP of a post, sawn lumber. */
    public static double columnStability(double fcE, double fcStar) {
        double half = (1 + fcE / fcStar) / 1.6;
        return half - Math.sqrt(half * half - fcE / fcStar / 0.8);
    }
}
