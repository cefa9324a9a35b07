package borderwright.engine.strength.timber;

import borderwright.engine.strength.worked.Working;

/**
 * One screw or nail through one timber into another by EN 1995-1-1 section 8.
 *
 * @param fastener the fastener
 * @param fixedMm thickness of the timber under its head
 * @param receiverMm depth of the timber that it ends in
 * @param fixed class of the timber under its head
 * @param receiver class of the other
 * @param grain of the receiver
 */
public record Eurocode5Joint(
        Fastener fastener,
        double fixedMm,
        double receiverMm,
        StrengthClass fixed,
        StrengthClass receiver,
        DrivenInto grain) {

    /**
     * Share of the side-grain lateral resistance in end grain: 8.3.1.2(4) (from memory) allows a third for secondary
     * structures, and not in service class 3; the sheet of a planter whose corner leans on it notes so.
     */
    public static final double END_GRAIN_SHARE = 1 / 3.0;

    private boolean isEndGrain() {
        return grain == DrivenInto.END_GRAIN;
    }

    /** Point-side penetration, mm. */
    public double penetrationMm() {
        return Math.min(receiverMm, fastener.penetrationMm(fixedMm));
    }

    /** Slip modulus in shear at the serviceability limit, table 7.1, N/mm. */
    public double slipModulus() {
        double rhoM = Math.sqrt(fixed.rhoMean() * receiver.rhoMean());
        double d = fastener.diameterMm();
        double power = StrictMath.pow(rhoM, 1.5);
        double side =
                fastener.isScrew() || fastener.predrilled() ? power * d / 23 : power * StrictMath.pow(d, 0.8) / 30;
        return isEndGrain() ? END_GRAIN_SHARE * side : side;
    }

    /** Characteristic lateral resistance, N; 0 where it goes less than 4 d (8 d for smooth nails: 8.3.1.2(1)) into it. */
    public double lateralN(Working working) {
        double d = fastener.effectiveMm();
        double least = fastener.isScrew() ? 4 * fastener.diameterMm() : 8 * d;
        if (penetrationMm() < least) {
            working.remark("EN 1995-1-1 8.3.1.2(1), 8.7.1", TimberStep.POINT_TOO_SHALLOW, least);
            return 0;
        }
        working.step("d", TimberStep.EFFECTIVE_DIAMETER, d, "mm", "EN 1995-1-1 8.7.1(3)");
        working.step("t1", TimberStep.HEAD_SIDE_THICKNESS, fixedMm, "mm", "");
        working.step("t2", TimberStep.POINT_SIDE_PENETRATION, penetrationMm(), "mm", "");
        double fh1 = working.step(
                "fh1", TimberStep.EMBEDMENT_HEAD_SIDE, embed(fixed, d), "N/mm2", "EN 1995-1-1 eq. 8.15, 8.16");
        double fh2 = working.step(
                "fh2", TimberStep.EMBEDMENT_POINT_SIDE, embed(receiver, d), "N/mm2", "EN 1995-1-1 eq. 8.15, 8.16");
        double my = working.step(
                "My,Rk", "0.3 fu d^2.6", Johansen.yieldMoment(fastener.fuNPerMm2(), d), "Nmm", "EN 1995-1-1 eq. 8.14");
        double rope = fastener.kind() == Fastener.Kind.SMOOTH_NAIL ? 0 : isEndGrain() ? 0 : withdrawalN(Working.SILENT);
        Johansen modes = Johansen.of(fh1, fixedMm, fh2, penetrationMm(), d, my, rope, fastener.isScrew() ? 1 : 0.5);
        double side = modes.write(working);
        return isEndGrain()
                ? working.step(
                        "Fv,Rk", TimberStep.A_THIRD_IN_END_GRAIN, side * END_GRAIN_SHARE, "N", "EN 1995-1-1 8.3.1.2(4)")
                : side;
    }

    private double embed(StrengthClass timber, double d) {
        return fastener.embedment(timber.rhoK(), d);
    }

    /** Characteristic resistance against being pulled out or its head pulled through, N; 0 in end grain and smooth nails. */
    public double withdrawalN(Working working) {
        if (isEndGrain()) {
            working.remark("EN 1995-1-1 8.3.2(1)P, 8.7.2(3)", TimberStep.NO_PULL_IN_END_GRAIN);
            return 0;
        }
        return switch (fastener.kind()) {
            case SCREW -> screwWithdrawalN(fastener.pull().orElseThrow(), working);
            case SMOOTH_NAIL -> {
                working.remark("EN 1995-1-1 8.3.2(1)P", TimberStep.NO_PULL_ON_SMOOTH_NAILS);
                yield 0;
            }
            case RINGED_NAIL -> ringedNailWithdrawalN(working);
        };
    }

    private double screwWithdrawalN(ScrewPull pull, Working working) {
        double d = fastener.diameterMm();
        double lef = working.step(
                "lef", TimberStep.THREAD_IN_RECEIVER, Math.min(fastener.threadMm(), penetrationMm()), "mm", "8.7.2");
        if (lef < 6 * d) {
            working.remark("EN 1995-1-1 8.7.2(2)", TimberStep.THREAD_TOO_SHALLOW);
            return 0;
        }
        double out = isInFormulaRange() ? byFormulaN(lef, working) : byFigureN(pull.withdrawal(), lef, working);
        ScrewPull.Figure headPull = pull.headPullThrough();
        double fhead =
                working.step("fhead,k", TimberStep.HEAD_PULL_THROUGH, headPull.nPerMm2(), "N/mm2", headPull.source());
        double head = working.step(
                "Fhead",
                "fhead,k dh^2 (rho,k / rho,a)^0.8",
                fhead
                        * fastener.headMm()
                        * fastener.headMm()
                        * StrictMath.pow(fixed.rhoK() / ScrewPull.RHO_KG_PER_M3, 0.8),
                "N",
                "EN 1995-1-1 eq. 8.40b");
        return working.step("Fax,Rk", TimberStep.THE_LESSER, Math.min(out, head), "N", "EN 1995-1-1 8.7.2(3)");
    }

    /** 8.7.2(4), A1:2008: 6 to 12 mm outer, root 0.6 to 0.75 of it. */
    public boolean isInFormulaRange() {
        double d = fastener.diameterMm();
        double ratio = fastener.rootMm() / d;
        return d >= 6 && d <= 12 && ratio >= 0.6 && ratio <= 0.75;
    }

    private double byFormulaN(double lef, Working working) {
        double d = fastener.diameterMm();
        double fax = working.step(
                "fax,k",
                "0.52 d^-0.5 lef^-0.1 rho,k^0.8",
                withdrawalStrength(d, lef, receiver.rhoK()),
                "N/mm2",
                "eq. 8.39");
        double kd = working.step("kd", TimberStep.DIAMETER_FACTOR, Math.min(1, d / 8), "", "EN 1995-1-1 eq. 8.40");
        return working.step("Fax,t", "fax,k d lef kd", fax * d * lef * kd, "N", "EN 1995-1-1 eq. 8.38");
    }

    private double byFigureN(ScrewPull.Figure withdrawal, double lef, Working working) {
        double d = fastener.diameterMm();
        double fax = working.step(
                "fax,k", TimberStep.WITHDRAWAL_PARAMETER, withdrawal.nPerMm2(), "N/mm2", withdrawal.source());
        double density = StrictMath.pow(receiver.rhoK() / ScrewPull.RHO_KG_PER_M3, 0.8);
        return working.step(
                "Fax,t", "fax,k d lef (rho,k / rho,a)^0.8", fax * d * lef * density, "N", "EN 1995-1-1 eq. 8.40a");
    }

    /** 8.39: withdrawal strength across the grain, N/mm2. */
    public static double withdrawalStrength(double dMm, double lefMm, double rhoK) {
        return 0.52 * StrictMath.pow(dMm, -0.5) * StrictMath.pow(lefMm, -0.1) * StrictMath.pow(rhoK, 0.8);
    }

    private double ringedNailWithdrawalN(Working working) {
        double d = fastener.diameterMm();
        double pen = Math.min(fastener.threadMm(), penetrationMm());
        if (pen < 6 * d) {
            working.remark("EN 1995-1-1 8.3.2(7)", TimberStep.RINGS_TOO_SHALLOW);
            return 0;
        }
        double shallow = Math.min(1, Math.max(0, pen / (2 * d) - 3));
        double out = nailWithdrawal(receiver.rhoK()) * d * pen * shallow;
        double head = nailHead(fixed.rhoK()) * fastener.headMm() * fastener.headMm();
        return working.step("Fax,Rk", TimberStep.RINGED_NAIL, Math.min(out, head), "N", "eq. 8.23");
    }

    /** 8.25: nails of at least 12 d penetration, N/mm2. */
    public static double nailWithdrawal(double rhoK) {
        return 20e-6 * rhoK * rhoK;
    }

    /** 8.26, N/mm2. */
    public static double nailHead(double rhoK) {
        return 70e-6 * rhoK * rhoK;
    }
}
