package borderwright.engine.ground;

/**
 * Volume of ground above a level, and of air below it, mm3.
 *
 * <p>See docs/decisions/0060.
 *
 * @param cutMm3 ground above the level, to be taken away; not negative
 * @param fillMm3 room between the ground and the level, to be made up; not negative
 */
public record CutAndFill(double cutMm3, double fillMm3) {
    public static final CutAndFill NONE = new CutAndFill(0, 0);

    public CutAndFill plus(CutAndFill other) {
        return new CutAndFill(cutMm3 + other.cutMm3, fillMm3 + other.fillMm3);
    }

    /**
     * Between one plane triangle and a level: exact.
     *
     * <p>Over a triangle of plan area A whose corners stand a, b and c above the level, the net volume is A (a + b + c) / 3.
     * Where one corner alone lies on its side of the level, the part with it is a pyramid over a smaller triangle: A a^3 / (3
     * (a - b) (a - c)). The other part is the difference.
     *
     * @param areaMm2 area on the plan
     * @param aMm height of one corner above the level, negative below it
     * @param bMm of the second
     * @param cMm of the third
     */
    public static CutAndFill under(double areaMm2, double aMm, double bMm, double cMm) {
        double net = areaMm2 * (aMm + bMm + cMm) / 3;
        int above = (aMm > 0 ? 1 : 0) + (bMm > 0 ? 1 : 0) + (cMm > 0 ? 1 : 0);
        if (above == 1) {
            double cut = pyramid(areaMm2, aMm, bMm, cMm, 1);
            return new CutAndFill(cut, Math.max(0, cut - net));
        }
        if (above == 2 && Math.min(aMm, Math.min(bMm, cMm)) < 0) {
            double fill = pyramid(areaMm2, aMm, bMm, cMm, -1);
            return new CutAndFill(Math.max(0, net + fill), fill);
        }
        return above >= 2 ? new CutAndFill(net, 0) : new CutAndFill(0, Math.abs(net));
    }

    /** The pyramid at the corner whose height alone has the sign given. */
    private static double pyramid(double areaMm2, double a, double b, double c, int sign) {
        if (sign * a > 0) {
            return tip(areaMm2, sign * a, sign * b, sign * c);
        }
        return sign * b > 0 ? tip(areaMm2, sign * b, sign * c, sign * a) : tip(areaMm2, sign * c, sign * a, sign * b);
    }

    private static double tip(double areaMm2, double high, double low, double other) {
        // Ratios first: each lies between 0 and 1, so no cube of a length can overflow or lose figures.
        return areaMm2 * high / 3 * (high / (high - low)) * (high / (high - other));
    }
}
