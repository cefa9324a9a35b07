package borderwright.engine.strength.rules;

import borderwright.engine.message.Message;
import borderwright.engine.strength.timber.DrivenInto;
import borderwright.engine.strength.timber.Eurocode5Factors;
import borderwright.engine.strength.timber.Eurocode5Joint;
import borderwright.engine.strength.timber.Eurocode5Timber;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.ServiceClass;
import borderwright.engine.strength.timber.Spacings;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.timber.TimberMessage;
import borderwright.engine.strength.timber.TimberStep;
import borderwright.engine.strength.worked.Working;

/** EN 1995-1-1 in service class 3 with the partial factors of EN 1990 table A1.2(B). */
final class Eurocode5 implements RuleSet {
    @Override
    public Message name() {
        return TimberMessage.EUROCODE_5.of();
    }

    @Override
    public double permanentFactor() {
        return 1.35;
    }

    @Override
    public double passingFactor() {
        return 1.5;
    }

    @Override
    public Timber timber(Grade grade) {
        return Eurocode5Timber.of(grade, ServiceClass.SC3);
    }

    @Override
    public FastenerJoint joint(
            Fastener fastener, double fixedMm, Grade fixed, double receiverMm, Grade receiver, DrivenInto grain) {
        Eurocode5Timber under = Eurocode5Timber.of(fixed, ServiceClass.SC3);
        Eurocode5Timber into = Eurocode5Timber.of(receiver, ServiceClass.SC3);
        Eurocode5Joint one =
                new Eurocode5Joint(fastener, fixedMm, receiverMm, under.strengthClass(), into.strengthClass(), grain);
        return new Design(one, Math.sqrt(under.kdef() * into.kdef()));
    }

    @Override
    public double loadedEdgeMm(double dMm) {
        return Spacings.predrilled(dMm, Math.PI / 2).loadedEdgeMm();
    }

    @Override
    public FastenerJoint plate(Fastener fastener, double plateMm, double receiverMm, Grade receiver) {
        Eurocode5Timber into = Eurocode5Timber.of(receiver, ServiceClass.SC3);
        return new Eurocode5Plate(fastener, plateMm, receiverMm, into.strengthClass(), into.kdef());
    }

    /**
     * The design side of a joint.
     *
     * @param one one fastener
     * @param kdef of the two timbers together, 2.3.2.2(4) halved
     */
    private record Design(Eurocode5Joint one, double kdef) implements FastenerJoint {
        @Override
        public double slipModulus() {
            return one.slipModulus();
        }

        @Override
        public double creepFactor() {
            return slipCreep(kdef);
        }

        @Override
        public double ultimateShare() {
            return ULTIMATE_SHARE;
        }

        @Override
        public boolean holdsPull() {
            return one.withdrawalN(Working.SILENT) > 0;
        }

        @Override
        public double utilisation(double lateralN, double pullN, int count, LoadDuration duration, Working working) {
            double factor = designFactor(duration, working);
            double lateral = share("Fv", lateralN, lateralN == 0 ? 0 : one.lateralN(working) * count * factor, working);
            double number = one.fastener().isScrew() ? Eurocode5Factors.effectiveNumber(count) : count;
            double pull = share("Fax", pullN, pullN == 0 ? 0 : one.withdrawalN(working) * number * factor, working);
            if (one.fastener().kind() == Fastener.Kind.SMOOTH_NAIL) {
                return working.step("use", TimberStep.LATERAL_PLUS_PULL, lateral + pull, "", "EN 1995-1-1 eq. 8.27");
            }
            return working.step(
                    "use",
                    TimberStep.ROOT_OF_SQUARES,
                    Math.sqrt(lateral * lateral + pull * pull),
                    "",
                    "EN 1995-1-1 eq. 8.28");
        }

        private static double share(String symbol, double load, double resistance, Working working) {
            if (load == 0) {
                return 0;
            }
            working.step(symbol + ",Ed", TimberStep.ALL_FASTENERS, Math.abs(load), "N", "");
            working.step(symbol + ",Rd", TimberStep.NUMBER_THAT_COUNTS, resistance, "N", "");
            return resistance > 0 ? Math.abs(load) / resistance : NOTHING_HOLDS;
        }
    }

    /** 2.2.2(2): Ku = 2/3 Kser. */
    static final double ULTIMATE_SHARE = 2 / 3.0;

    /** 2.3.2.2(3) and (4): slip creeps twice as much as timber. */
    static double slipCreep(double kdef) {
        return 1 + 2 * kdef;
    }

    /** Design over characteristic resistance of a joint out of doors. */
    static double designFactor(LoadDuration duration, Working working) {
        return working.step(
                "kmod / gammaM",
                () -> TimberStep.DESIGN_FACTOR.of(duration.of()),
                Eurocode5Factors.kmod(ServiceClass.SC3, duration) / Eurocode5Factors.GAMMA_M,
                "",
                "EN 1995-1-1 tables 3.1, 2.3");
    }

    /** A utilisation that stands for a load on something that counts zero. */
    static final double NOTHING_HOLDS = 999;
}
