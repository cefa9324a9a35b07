package borderwright.engine.strength.timber;

import borderwright.engine.strength.worked.Working;

/**
 * One shear plane between two timbers by EN 1995-1-1 equation 8.6, and the figures that go into it (formulas from memory,
 * checked by their identities and by published results).
 *
 * @param aN bearing of the head-side timber
 * @param bN bearing of the point-side timber
 * @param cN both bear, the fastener turns
 * @param dN one hinge, in the point-side timber's favour
 * @param eN one hinge, in the head-side timber's favour
 * @param fN two hinges
 * @param rope what the rope effect adds to modes c to f
 */
public record Johansen(double aN, double bN, double cN, double dN, double eN, double fN, Rope rope) {
    /**
     * The rope effect of a fastener that is drawn tight as the joint slips (EN 1995-1-1, 8.2.2(2)).
     *
     * @param mostN what it adds at most, before its cap
     * @param share cap of it as a share of the Johansen part
     */
    public record Rope(double mostN, double share) {}

    /**
     * Both timbers in hand.
     *
     * @param fh1 embedment strength head side, N/mm2
     * @param t1Mm head-side thickness
     * @param fh2 embedment strength point side, N/mm2
     * @param t2Mm point-side penetration
     * @param dMm diameter
     * @param myNmm yield moment of the fastener
     * @param faxN withdrawal resistance that lends its rope effect; 0 for none
     * @param ropeShare 0.15 round nails, 0.25 square nails, 0.5 other nails, 1 screws (8.2.2(2))
     */
    public static Johansen of(
            double fh1, double t1Mm, double fh2, double t2Mm, double dMm, double myNmm, double faxN, double ropeShare) {
        double beta = fh2 / fh1;
        double r = t2Mm / t1Mm;
        double whole = fh1 * t1Mm * dMm;
        double c = whole
                / (1 + beta)
                * (Math.sqrt(beta + 2 * beta * beta * (1 + r + r * r) + beta * beta * beta * r * r) - beta * (1 + r));
        double d = 1.05
                * whole
                / (2 + beta)
                * (Math.sqrt(2 * beta * (1 + beta) + 4 * beta * (2 + beta) * myNmm / (fh1 * dMm * t1Mm * t1Mm)) - beta);
        double e = 1.05
                * fh1
                * t2Mm
                * dMm
                / (1 + 2 * beta)
                * (Math.sqrt(2 * beta * beta * (1 + beta)
                                + 4 * beta * (1 + 2 * beta) * myNmm / (fh1 * dMm * t2Mm * t2Mm))
                        - beta);
        double f = 1.15 * Math.sqrt(2 * beta / (1 + beta)) * Math.sqrt(2 * myNmm * fh1 * dMm);
        return new Johansen(whole, fh2 * t2Mm * dMm, c, d, e, f, new Rope(faxN / 4, ropeShare));
    }

    private double withRope(double mode) {
        return mode + Math.min(rope.mostN, rope.share * mode);
    }

    /** Characteristic resistance of one fastener in one plane, N. */
    public double resistanceN() {
        double hinged = Math.min(Math.min(withRope(cN), withRope(dN)), Math.min(withRope(eN), withRope(fN)));
        return Math.min(Math.min(aN, bN), hinged);
    }

    /** The mode that governs, a to f. */
    public char mode() {
        double least = resistanceN();
        if (least == aN) {
            return 'a';
        }
        if (least == bN) {
            return 'b';
        }
        if (least == withRope(cN)) {
            return 'c';
        }
        if (least == withRope(dN)) {
            return 'd';
        }
        return least == withRope(eN) ? 'e' : 'f';
    }

    /** Writes all modes on a sheet and gives the resistance. */
    double write(Working working) {
        String source = "EN 1995-1-1 eq. 8.6";
        working.step("mode a", "fh1 t1 d", aN, "N", source);
        working.step("mode b", "fh2 t2 d", bN, "N", source);
        working.step("mode c", TimberStep.RIGID_TURN, cN, "N", source);
        working.step("mode d", TimberStep.HINGE_POINT_SIDE, dN, "N", source);
        working.step("mode e", TimberStep.HINGE_HEAD_SIDE, eN, "N", source);
        working.step("mode f", TimberStep.TWO_HINGES, fN, "N", source);
        working.step("rope", () -> TimberStep.ROPE_EFFECT.of(rope.share), rope.mostN, "N", "EN 1995-1-1 8.2.2(2)");
        return working.step(
                "Fv,Rk", () -> TimberStep.LEAST_MODE.of(String.valueOf(mode())), resistanceN(), "N", source);
    }

    /** Embedment for nails up to 8 mm and screws up to 6 mm, not predrilled: 8.15, N/mm2. */
    public static double embedment(double rhoK, double dMm) {
        return 0.082 * rhoK * StrictMath.pow(dMm, -0.3);
    }

    /** The same in predrilled holes: 8.16, N/mm2. */
    static double embedmentPredrilled(double rhoK, double dMm) {
        return 0.082 * (1 - 0.01 * dMm) * rhoK;
    }

    /** Yield moment of a round wire: 0.3 fu d^2.6 (8.14), N mm. */
    public static double yieldMoment(double fu, double dMm) {
        return 0.3 * fu * StrictMath.pow(dMm, 2.6);
    }
}
