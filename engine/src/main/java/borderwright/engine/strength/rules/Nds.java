package borderwright.engine.strength.rules;

import borderwright.engine.measure.UnitFactors;
import borderwright.engine.message.Message;
import borderwright.engine.strength.timber.DrivenInto;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.NdsFactors;
import borderwright.engine.strength.timber.NdsTimber;
import borderwright.engine.strength.timber.NdsWithdrawal;
import borderwright.engine.strength.timber.NdsYield;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.timber.TimberMessage;
import borderwright.engine.strength.timber.TimberStep;
import borderwright.engine.strength.worked.Working;

/** NDS 2018, allowable stress design, wet service: the basis for imperial gardens. */
final class Nds implements RuleSet {

    @Override
    public Message name() {
        return TimberMessage.NDS.of();
    }

    @Override
    public double permanentFactor() {
        return 1;
    }

    @Override
    public double passingFactor() {
        return 1;
    }

    @Override
    public Timber timber(Grade grade) {
        return NdsTimber.of(grade);
    }

    @Override
    public FastenerJoint joint(
            Fastener fastener, double fixedMm, Grade fixed, double receiverMm, Grade receiver, DrivenInto grain) {
        return new One(
                fastener,
                fixedMm,
                receiverMm,
                NdsYield.bearing(NdsTimber.of(fixed).grade().g()),
                NdsTimber.of(fixed).grade().g(),
                NdsTimber.of(receiver).grade().g(),
                grain);
    }

    /** The commentary's advice for nails and screws below 1/4 in, table C12.1.5.7 (from memory). */
    @Override
    public double loadedEdgeMm(double dMm) {
        return 2.5 * dMm;
    }

    @Override
    public FastenerJoint plate(Fastener fastener, double plateMm, double receiverMm, Grade receiver) {
        double g = NdsTimber.of(receiver).grade().g();
        return new One(fastener, plateMm, receiverMm, NdsYield.STEEL_PSI, g, g, DrivenInto.SIDE_GRAIN);
    }

    /**
     * One kind of fastener between two members.
     *
     * @param fastener the fastener
     * @param fixedMm thickness of the side member
     * @param receiverMm depth of the main member
     * @param fes bearing strength of the side member, psi
     * @param sideG specific gravity of the side member; of a steel plate that of the main member
     * @param mainG specific gravity of the main member
     * @param grain of the main member
     */
    private record One(
            Fastener fastener,
            double fixedMm,
            double receiverMm,
            double fes,
            double sideG,
            double mainG,
            DrivenInto grain)
            implements FastenerJoint {
        private static final double LEAST_DIAMETERS = 6;
        private static final double FULL_DIAMETERS = 10;

        private boolean isEndGrain() {
            return grain == DrivenInto.END_GRAIN;
        }

        /** The NDS gives none for screws and nails: EN 1995-1-1 table 7.1 with densities from specific gravity. */
        @Override
        public double slipModulus() {
            double rho = 1000 * Math.sqrt(sideG * mainG);
            double share = isEndGrain() ? NdsFactors.END_GRAIN_LATERAL : 1;
            double d = fastener.diameterMm();
            double power = StrictMath.pow(rho, 1.5);
            boolean drilled = fastener.isScrew() || fastener.predrilled();
            return share * (drilled ? power * d / 23 : power * StrictMath.pow(d, 0.8) / 30);
        }

        /** The NDS is silent: twice the creep of the timber (careful default, no source). */
        @Override
        public double creepFactor() {
            return 4;
        }

        @Override
        public double ultimateShare() {
            return 2 / 3.0;
        }

        @Override
        public boolean holdsPull() {
            return pullLb(LoadDuration.PERMANENT, Working.SILENT) > 0;
        }

        @Override
        public double utilisation(double lateralN, double pullN, int count, LoadDuration duration, Working working) {
            double lateral = share(lateralN, lateralN == 0 ? 0 : lateralLb(duration, working) * count, "Z'", working);
            double pull = share(pullN, pullN == 0 ? 0 : pullLb(duration, working) * count, "W'", working);
            return working.step(
                    "use",
                    TimberStep.LATERAL_PLUS_PULL,
                    lateral + pull,
                    "",
                    "NDS eq. 12.4-1, alpha both parts in line");
        }

        private static double share(double loadN, double allowedLb, String symbol, Working working) {
            if (loadN == 0) {
                return 0;
            }
            double lb =
                    working.step("load for " + symbol, "", Math.abs(loadN) / UnitFactors.N_PER_POUND_FORCE, "lb", "");
            working.step(symbol + " of all", TimberStep.NUMBER_TIMES_ONE, allowedLb, "lb", "");
            return allowedLb > 0 ? lb / allowedLb : Eurocode5.NOTHING_HOLDS;
        }

        private double lateralLb(LoadDuration duration, Working working) {
            double nominal = fastener.diameterMm() / NdsTimber.MM_PER_IN;
            double d = (fastener.isScrew() ? fastener.rootMm() : fastener.diameterMm()) / NdsTimber.MM_PER_IN;
            double p = Math.min(receiverMm, fastener.penetrationMm(fixedMm)) / NdsTimber.MM_PER_IN;
            if (p < LEAST_DIAMETERS * nominal) {
                working.remark("NDS 12.1.5.6", TimberStep.POINT_TOO_SHALLOW_BY_NDS);
                return 0;
            }
            double fem = working.step("Fem", "16600 G^1.84", NdsYield.bearing(mainG), "psi", "NDS 12.3.3");
            double bearing = working.step("Fes", TimberStep.SIDE_MEMBER, fes, "psi", "NDS 12.3.3, 12.3.3.1");
            double fyb =
                    working.step("Fyb", TimberStep.BY_DIAMETER, NdsYield.bendingYield(nominal), "psi", "NDS table I1");
            NdsYield yield = NdsYield.of(d, p, fixedMm / NdsTimber.MM_PER_IN, fem, bearing, fyb, NdsYield.reduction(d));
            double z = working.step("Z", TimberStep.LEAST_OF_SIX_MODES, yield.z(), "lb", "NDS table 12.3.1A");
            double shallow = Math.min(1, p / (FULL_DIAMETERS * nominal));
            double end = isEndGrain() ? NdsFactors.END_GRAIN_LATERAL : 1;
            return working.step(
                    "Z'",
                    "Z CD CM Ceg p/10D",
                    z * duration.ndsFactor() * NdsFactors.WET_JOINT * end * shallow,
                    "lb",
                    "NDS table 11.3.1");
        }

        private double pullLb(LoadDuration duration, Working working) {
            boolean smooth = fastener.kind() == Fastener.Kind.SMOOTH_NAIL;
            if (isEndGrain() || (smooth && duration == LoadDuration.PERMANENT)) {
                working.remark("NDS 12.2.2.3, 12.2.3.2; house rule", TimberStep.NO_PULL_BY_NDS);
                return 0;
            }
            double d = fastener.diameterMm() / NdsTimber.MM_PER_IN;
            double p = Math.min(receiverMm, fastener.penetrationMm(fixedMm)) / NdsTimber.MM_PER_IN;
            double held = fastener.isScrew() ? Math.min(p, fastener.threadMm() / NdsTimber.MM_PER_IN) : p;
            double perInch =
                    fastener.isScrew() ? NdsWithdrawal.woodScrew(mainG, d) : NdsWithdrawal.smoothNail(mainG, d);
            double wet = fastener.isScrew() ? NdsFactors.WET_JOINT : NdsFactors.WET_NAIL_PULLED;
            working.step("W", TimberStep.WOOD_SCREW_OR_NAIL, perInch, "lb/in", "NDS 12.2");
            return working.step(
                    "W'", "W p CD CM", perInch * held * duration.ndsFactor() * wet, "lb", "NDS table 11.3.1");
        }
    }
}
