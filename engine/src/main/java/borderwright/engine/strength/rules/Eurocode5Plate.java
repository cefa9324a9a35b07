package borderwright.engine.strength.rules;

import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Johansen;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.StrengthClass;
import borderwright.engine.strength.timber.TimberStep;
import borderwright.engine.strength.worked.Working;

/**
 * One screw through a thin steel plate into timber, single shear, EN 1995-1-1 8.2.3(3) equation 8.9 (from memory). The
 * rope effect is left out, since straps are also pulled off their timber a little.
 *
 * @param fastener the screw
 * @param plateMm thickness of the plate; thin is at most half the diameter
 * @param receiverMm depth of the timber
 * @param receiver its class
 * @param kdef of the timber
 */
record Eurocode5Plate(Fastener fastener, double plateMm, double receiverMm, StrengthClass receiver, double kdef)
        implements FastenerJoint {
    private static final double STEEL_TO_TIMBER = 2;

    Eurocode5Plate {
        if (plateMm > fastener.diameterMm() / 2) {
            throw new IllegalArgumentException("a thin plate is at most half the screw's " + fastener.diameterMm()
                    + " mm thick, got " + plateMm + " mm");
        }
    }

    /** Table 7.1 and 7.1(3): twice that of two timbers of this density. */
    @Override
    public double slipModulus() {
        return STEEL_TO_TIMBER * StrictMath.pow(receiver.rhoMean(), 1.5) * fastener.diameterMm() / 23;
    }

    @Override
    public double creepFactor() {
        return Eurocode5.slipCreep(kdef);
    }

    @Override
    public double ultimateShare() {
        return Eurocode5.ULTIMATE_SHARE;
    }

    @Override
    public boolean holdsPull() {
        return false;
    }

    /** Characteristic resistance of one screw, N. */
    double lateralN(Working working) {
        double d = fastener.effectiveMm();
        double t1 = Math.min(receiverMm, fastener.penetrationMm(plateMm));
        working.step("d", TimberStep.EFFECTIVE_DIAMETER, d, "mm", "EN 1995-1-1 8.7.1(3)");
        working.step("t1", TimberStep.PENETRATION, t1, "mm", "");
        double fh = working.step(
                "fh,k",
                TimberStep.EMBEDMENT,
                fastener.embedment(receiver.rhoK(), d),
                "N/mm2",
                "EN 1995-1-1 eq. 8.15, 8.16");
        double my = working.step(
                "My,Rk", "0.3 fu d^2.6", Johansen.yieldMoment(fastener.fuNPerMm2(), d), "Nmm", "EN 1995-1-1 eq. 8.14");
        double turns = working.step("mode a", "0.4 fh,k t1 d", 0.4 * fh * t1 * d, "N", "EN 1995-1-1 eq. 8.9a");
        double bends = working.step(
                "mode b", TimberStep.ROOT_MODE_B, 1.15 * Math.sqrt(2 * my * fh * d), "N", "EN 1995-1-1 eq. 8.9b");
        return working.step("Fv,Rk", TimberStep.THE_LESSER, Math.min(turns, bends), "N", "EN 1995-1-1 eq. 8.9");
    }

    @Override
    public double utilisation(double lateralN, double pullN, int count, LoadDuration duration, Working working) {
        if (pullN > 0) {
            return Eurocode5.NOTHING_HOLDS;
        }
        double factor = Eurocode5.designFactor(duration, working);
        double resistance =
                working.step("Fv,Rd", TimberStep.NUMBER_TIMES_SCREW, lateralN(working) * count * factor, "N", "");
        working.step("Fv,Ed", TimberStep.ALL_SCREWS, Math.abs(lateralN), "N", "");
        return working.step("use", "Fv,Ed / Fv,Rd", Math.abs(lateralN) / resistance, "", "");
    }
}
