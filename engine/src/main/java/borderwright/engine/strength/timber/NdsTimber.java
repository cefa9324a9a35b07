package borderwright.engine.strength.timber;

import borderwright.engine.message.Message;
import borderwright.engine.strength.worked.Working;
import java.util.Optional;

/**
 * Dimension lumber by the NDS, allowable stress design, wet service; forces come in as N and mm.
 *
 * @param grade its reference values
 * @param basis which grade was taken and why
 */
public record NdsTimber(NdsGrade grade, Message basis) implements Timber {
    static final double N_PER_MM2_PER_PSI = 0.006894757293168;
    public static final double MM_PER_IN = 25.4;

    public static NdsTimber of(Grade stampedGrade) {
        String stamped = stampedGrade.stamped();
        Optional<NdsGrade> named = stamped == null ? Optional.empty() : NdsGrade.named(stamped);
        if (named.isPresent()) {
            return new NdsTimber(
                    named.get(), TimberMessage.STAMPED_GRADE.of(named.get().name()));
        }
        String lowest = NdsGrade.LOWEST.name();
        return new NdsTimber(
                NdsGrade.LOWEST,
                stamped == null
                        ? TimberMessage.NO_GRADE_NDS.of(lowest)
                        : TimberMessage.UNKNOWN_GRADE_NDS.of(stamped, lowest));
    }

    @Override
    public double e0Mean() {
        return grade.e() * NdsFactors.WET_STIFFNESS * N_PER_MM2_PER_PSI;
    }

    /** E / 30, as EN 338 has it for softwood: the NDS names none. */
    @Override
    public double e90Mean() {
        return e0Mean() / 30;
    }

    /** E / 16. */
    @Override
    public double gMean() {
        return e0Mean() / 16;
    }

    /** Kcr of NDS 3.5.2: 2.0 for unseasoned lumber and for wet service. */
    @Override
    public double creepFactor() {
        return 2.0;
    }

    @Override
    public double bending(TimberSection section, Effects effects, LoadDuration duration, Working working) {
        double t = section.thicknessMm() / MM_PER_IN;
        double w = section.widthMm() / MM_PER_IN;
        double cf = NdsFactors.sizeInBending(t, w);
        working.step("Fb", grade.name(), grade.fb(), "psi", "NDS Supplement table 4A");
        working.step("CF", TimberStep.SIZE, cf, "", "table 4A");
        double cm =
                working.step("CM", TimberStep.WET_SERVICE, NdsFactors.wetInBending(grade.fb() * cf), "", "table 4A");
        double edge = working.step(
                "Fb'", "Fb CD CM CF", grade.fb() * duration.ndsFactor() * cm * cf, "psi", "NDS table 4.3.1");
        double flat = working.step("Fb',flat", "Fb' Cfu", edge * NdsFactors.flatUse(t, w), "psi", "NDS table 4.3.1");
        double flatUse = use("fb,flat", effects.flatNmm() / section.flatModulusMm3(), flat, working);
        double edgeUse = use("fb,edge", effects.edgeNmm() / section.edgeModulusMm3(), edge, working);
        double axialUse = axial(section, effects.axialN(), duration, working);
        return working.step(
                "use", TimberStep.TENSION_AND_BENDING, axialUse + flatUse + edgeUse, "", "NDS eq. 3.9-1, 3.9-3");
    }

    private double axial(TimberSection section, double axialN, LoadDuration duration, Working working) {
        double stress = axialN / section.areaMm2();
        double w = section.widthMm() / MM_PER_IN;
        if (axialN < 0) {
            double ratio = use("fc", stress, compression(w, duration), working);
            return ratio * ratio;
        }
        double cf = NdsFactors.sizeInBending(section.thicknessMm() / MM_PER_IN, w);
        return use("ft", stress, grade.ft() * duration.ndsFactor() * cf, working);
    }

    private double compression(double widthIn, LoadDuration duration) {
        double cf = NdsFactors.sizeInCompression(widthIn);
        return grade.fc() * duration.ndsFactor() * cf * NdsFactors.wetInCompression(grade.fc() * cf);
    }

    private static double use(String symbol, double stressNPerMm2, double allowedPsi, Working working) {
        if (stressNPerMm2 == 0) {
            return 0;
        }
        double psi = working.step(symbol, TimberStep.STRESS, Math.abs(stressNPerMm2) / N_PER_MM2_PER_PSI, "psi", "");
        return working.step(symbol + " / F'", "", psi / allowedPsi, "", "");
    }

    @Override
    public double shear(TimberSection section, double shearN, LoadDuration duration, Working working) {
        double allowed = working.step(
                "Fv'",
                "Fv CD CM",
                grade.fv() * duration.ndsFactor() * NdsFactors.WET_IN_SHEAR,
                "psi",
                "NDS table 4.3.1");
        return use("fv = 3V / 2A", 1.5 * shearN / section.areaMm2(), allowed, working);
    }

    @Override
    public double bearing(double areaMm2, double forceN, LoadDuration duration, Working working) {
        double allowed = working.step(
                "Fc,perp'", "Fc,perp CM", grade.fcPerp() * NdsFactors.WET_ACROSS, "psi", "NDS table 4.3.1");
        return use("fc,perp", forceN / areaMm2, allowed, working);
    }

    @Override
    public double post(TimberSection section, double lengthMm, double forceN, LoadDuration duration, Working working) {
        double star = compression(Math.max(section.thicknessMm(), section.widthMm()) / MM_PER_IN, duration);
        double slenderness = lengthMm / Math.min(section.thicknessMm(), section.widthMm());
        double fcE = 0.822 * grade.eMin() * NdsFactors.WET_STIFFNESS / (slenderness * slenderness);
        double allowed = working.step(
                "Fc'", "Fc CD CM CF CP", star * NdsFactors.columnStability(fcE, star), "psi", "NDS eq. 3.7-1");
        return use("fc", forceN / section.areaMm2(), allowed, working);
    }
}
