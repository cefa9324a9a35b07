package borderwright.engine.strength.timber;

import borderwright.engine.message.Message;
import borderwright.engine.strength.worked.Working;
import java.util.Optional;

/**
 * Solid timber by EN 338 and EN 1995-1-1 section 6.
 *
 * @param strengthClass its class, the lowest where none is stamped
 * @param service how damp it stands
 * @param arrivesWet whether it dries under load
 * @param basis which class was taken and why
 */
public record Eurocode5Timber(StrengthClass strengthClass, ServiceClass service, boolean arrivesWet, Message basis)
        implements Timber {

    /** The stamped class, or the lowest where none is stamped. */
    public static Eurocode5Timber of(Grade grade, ServiceClass service) {
        String stamped = grade.stamped();
        Optional<StrengthClass> named = stamped == null ? Optional.empty() : StrengthClass.named(stamped);
        if (named.isPresent()) {
            return new Eurocode5Timber(
                    named.get(),
                    service,
                    grade.arrivesWet(),
                    TimberMessage.STAMPED_GRADE.of(named.get().name()));
        }
        String lowest = StrengthClass.LOWEST.name();
        return new Eurocode5Timber(
                StrengthClass.LOWEST,
                service,
                grade.arrivesWet(),
                stamped == null
                        ? TimberMessage.NO_GRADE_EN.of(lowest)
                        : TimberMessage.UNKNOWN_GRADE_EN.of(stamped, lowest));
    }

    public double kdef() {
        return arrivesWet ? Eurocode5Factors.kdefPutInWet(service) : Eurocode5Factors.kdef(service);
    }

    @Override
    public double e0Mean() {
        return strengthClass.e0Mean();
    }

    @Override
    public double e90Mean() {
        return strengthClass.e90Mean();
    }

    @Override
    public double gMean() {
        return strengthClass.gMean();
    }

    @Override
    public double creepFactor() {
        return 1 + kdef();
    }

    /** Design strength from a characteristic one, 2.4.1. */
    public double design(double characteristic, LoadDuration duration) {
        return Eurocode5Factors.kmod(service, duration) * characteristic / Eurocode5Factors.GAMMA_M;
    }

    private double designStrength(String symbol, double fk, double kh, LoadDuration duration, Working working) {
        working.step(symbol + ",k", strengthClass.name(), fk, "N/mm2", "EN 338:2016");
        working.step("kmod", duration, Eurocode5Factors.kmod(service, duration), "", "EN 1995-1-1 table 3.1");
        if (kh != 1) {
            working.step("kh", TimberStep.SIZE_FACTOR, kh, "", "EN 1995-1-1 eq. 3.1");
        }
        return working.step(
                symbol + ",d",
                kh == 1 ? "kmod fk / 1.3" : "kh kmod fk / 1.3",
                kh * design(fk, duration),
                "N/mm2",
                "EN 1995-1-1 2.4.1");
    }

    @Override
    public double bending(TimberSection section, Effects effects, LoadDuration duration, Working working) {
        double flat = stress("flat", effects.flatNmm(), section.flatModulusMm3(), working);
        double edge = stress("edge", effects.edgeNmm(), section.edgeModulusMm3(), working);
        double flatUse = flat == 0 ? 0 : flat / bendingStrength("fm,flat", section.thicknessMm(), duration, working);
        double edgeUse = edge == 0 ? 0 : edge / bendingStrength("fm,edge", section.widthMm(), duration, working);
        double axialUse = axial(section, effects.axialN(), duration, working);
        double km = Eurocode5Factors.KM;
        double use = axialUse + Math.max(flatUse + km * edgeUse, km * flatUse + edgeUse);
        return working.step("use", TimberStep.AXIAL_AND_BENDING, use, "", "EN 1995-1-1 eq. 6.11 to 6.20");
    }

    private static double stress(String which, double momentNmm, double modulusMm3, Working working) {
        if (momentNmm == 0) {
            return 0;
        }
        working.step("M," + which, TimberStep.MOMENT, Math.abs(momentNmm), "Nmm", "");
        working.step("W," + which, TimberStep.SECTION_MODULUS, modulusMm3, "mm3", "");
        return working.step("sigma," + which, "M / W", Math.abs(momentNmm) / modulusMm3, "N/mm2", "");
    }

    private double bendingStrength(String symbol, double depthMm, LoadDuration duration, Working working) {
        double kh = Eurocode5Factors.kh(depthMm, strengthClass.rhoK());
        return designStrength(symbol, strengthClass.fmk(), kh, duration, working);
    }

    private double axial(TimberSection section, double axialN, LoadDuration duration, Working working) {
        if (axialN == 0) {
            return 0;
        }
        double stress = working.step("sigma,ax", "N / A", Math.abs(axialN) / section.areaMm2(), "N/mm2", "");
        if (axialN < 0) {
            double ratio = stress / designStrength("fc,0", strengthClass.fc0k(), 1, duration, working);
            return ratio * ratio;
        }
        double greater = Math.max(section.thicknessMm(), section.widthMm());
        double kh = Eurocode5Factors.kh(greater, strengthClass.rhoK());
        return stress / designStrength("ft,0", strengthClass.ft0k(), kh, duration, working);
    }

    @Override
    public double shear(TimberSection section, double shearN, LoadDuration duration, Working working) {
        double area = working.step(
                "A,ef", "0.67 b h", Eurocode5Factors.KCR * section.areaMm2(), "mm2", "EN 1995-1-1 eq. 6.13a");
        double stress = working.step("tau", "1.5 V / A,ef", 1.5 * Math.abs(shearN) / area, "N/mm2", "");
        double strength = designStrength("fv", strengthClass.fvk(), 1, duration, working);
        return working.step("use", "tau / fv,d", stress / strength, "", "EN 1995-1-1 eq. 6.13");
    }

    @Override
    public double bearing(double areaMm2, double forceN, LoadDuration duration, Working working) {
        double stress = working.step("sigma,c,90", "F / A", Math.abs(forceN) / areaMm2, "N/mm2", "");
        double strength = designStrength("fc,90", strengthClass.fc90k(), 1, duration, working);
        return working.step("use", "sigma / (kc,90 fc,90,d), kc,90 = 1", stress / strength, "", "EN 1995-1-1 eq. 6.3");
    }

    @Override
    public double post(TimberSection section, double lengthMm, double forceN, LoadDuration duration, Working working) {
        double stress = working.step("sigma,c,0", "F / A", Math.abs(forceN) / section.areaMm2(), "N/mm2", "");
        double thin = Math.min(section.thicknessMm(), section.widthMm());
        double kc = working.step(
                "kc",
                TimberStep.BY_SLENDERNESS,
                Eurocode5Factors.kc(lengthMm, thin, strengthClass),
                "",
                "EN 1995-1-1 eq. 6.25 to 6.29");
        double strength = designStrength("fc,0", strengthClass.fc0k(), 1, duration, working);
        return working.step("use", "sigma / (kc fc,0,d)", stress / (kc * strength), "", "EN 1995-1-1 eq. 6.23");
    }
}
