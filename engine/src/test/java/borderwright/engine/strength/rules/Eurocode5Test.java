package borderwright.engine.strength.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import borderwright.engine.TestTerms;
import borderwright.engine.message.English;
import borderwright.engine.strength.timber.DrivenInto;
import borderwright.engine.strength.timber.Eurocode5Factors;
import borderwright.engine.strength.timber.Eurocode5Joint;
import borderwright.engine.strength.timber.Eurocode5Timber;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.Johansen;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.NdsYield;
import borderwright.engine.strength.timber.ServiceClass;
import borderwright.engine.strength.timber.Spacings;
import borderwright.engine.strength.timber.StrengthClass;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.timber.TimberSection;
import borderwright.engine.strength.worked.Working;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class Eurocode5Test {
    private static final StrengthClass C24 = StrengthClass.named("C24").orElseThrow();

    static Eurocode5Timber timber(String name, ServiceClass service) {
        return Eurocode5Timber.of(Grade.dry(name), service);
    }

    @Nested
    class Published {
        @ParameterizedTest
        @MethodSource("borderwright.engine.strength.timber.StrengthClass#all")
        void classesAgreeWithTheIdentitiesOfEn384(StrengthClass c) {
            // EN 384: E0,05 = 0.67 E0,mean for softwood (0.84 hardwood), G = E/16, E90 = E/30 (E/15 hardwood).
            boolean softwood = c.name().startsWith("C");
            double e05 = softwood ? 0.67 : 0.84;
            assertThat(c.e005()).isCloseTo(e05 * c.e0Mean(), within(60.0));
            assertThat(c.gMean()).isCloseTo(c.e0Mean() / 16, within(10.0));
            assertThat(c.e90Mean()).isCloseTo(c.e0Mean() / (softwood ? 30 : 15), within(10.0));
        }

        @ParameterizedTest
        @CsvSource({
            "C14, 14, 7.2, 16, 2.0, 3.0, 7000, 290, 350",
            "C16, 16, 8.5, 17, 2.2, 3.2, 8000, 310, 370",
            "C18, 18, 10, 18, 2.2, 3.4, 9000, 320, 380",
            "C24, 24, 14.5, 21, 2.5, 4.0, 11000, 350, 420",
            "C27, 27, 16.5, 22, 2.5, 4.0, 11500, 360, 430",
            "D30, 30, 18, 24, 5.3, 3.9, 11000, 530, 640"
        })
        void rowsOfEn338(
                String name,
                double fm,
                double ft,
                double fc,
                double fc90,
                double fv,
                double e,
                double rhoK,
                double rhoMean) {
            // EN 338:2016, tables 1 and 3.
            StrengthClass c = StrengthClass.named(name).orElseThrow();
            assertThat(c.fmk()).isEqualTo(fm);
            assertThat(c.ft0k()).isEqualTo(ft);
            assertThat(c.fc0k()).isEqualTo(fc);
            assertThat(c.fc90k()).isEqualTo(fc90);
            assertThat(c.fvk()).isEqualTo(fv);
            assertThat(c.e0Mean()).isEqualTo(e);
            assertThat(c.rhoK()).isEqualTo(rhoK);
            assertThat(c.rhoMean()).isEqualTo(rhoMean);
        }

        @ParameterizedTest
        @CsvSource({"100, 350, 1.0845", "40, 350, 1.3", "150, 350, 1.0", "225, 350, 1.0", "100, 710, 1.0"})
        void sizeFactor(double h, double rho, double printed) {
            // EN 1995-1-1 eq. 3.1; values of a published table of solid timber, h = 100 and 40 mm.
            assertThat(Eurocode5Factors.kh(h, rho)).isCloseTo(printed, within(5e-5));
        }

        @ParameterizedTest
        @CsvSource({
            "SC1, PERMANENT, 0.60",
            "SC2, LONG, 0.70",
            "SC1, MEDIUM, 0.80",
            "SC2, SHORT, 0.90",
            "SC3, PERMANENT, 0.50",
            "SC3, LONG, 0.55",
            "SC3, MEDIUM, 0.65",
            "SC3, SHORT, 0.70",
            "SC3, INSTANTANEOUS, 0.90"
        })
        void table31(ServiceClass service, LoadDuration duration, double printed) {
            assertThat(Eurocode5Factors.kmod(service, duration)).isEqualTo(printed);
        }

        @ParameterizedTest
        @CsvSource({"SC1, 0.60", "SC2, 0.80", "SC3, 2.00"})
        void table32(ServiceClass service, double printed) {
            assertThat(Eurocode5Factors.kdef(service)).isEqualTo(printed);
            assertThat(Eurocode5Factors.kdefPutInWet(service)).isEqualTo(printed + 1);
        }

        @Test
        void designStrengths() {
            // Worked design strengths of a published EN 1995-1-1 example set: C24 medium term service class 1 in
            // bending
            // 14.76923; C24 short term class 2 in compression 14.53846; C18 permanent class 3 across the grain
            // 0.846154.
            assertThat(timber("C24", ServiceClass.SC1).design(24, LoadDuration.MEDIUM))
                    .isCloseTo(14.76923, within(5e-6));
            assertThat(timber("C24", ServiceClass.SC2).design(21, LoadDuration.SHORT))
                    .isCloseTo(14.53846, within(5e-6));
            assertThat(timber("C18", ServiceClass.SC3).design(2.2, LoadDuration.PERMANENT))
                    .isCloseTo(0.846154, within(5e-7));
        }

        @Test
        void shearWithCracks() {
            // The same set's beam 75 x 225, V = 3.656 kN, medium term, class 1: 0.2112356 by the 2003 strengths without
            // cracks (fv,k 2.5); with kcr 0.67 and fv,k 4.0 the ratio is 0.2112356 x 2.5 / (0.67 x 4.0) = 0.197048.
            double use = timber("C24", ServiceClass.SC1)
                    .shear(new TimberSection(75, 225), 3656, LoadDuration.MEDIUM, Working.SILENT);
            assertThat(use).isCloseTo(0.2112356 * 2.5 / (0.67 * 4.0), within(1e-6));
        }

        @ParameterizedTest
        @CsvSource({
            // d, predrilled, rho, then a1 along, a2, a3t, a3c, a4t at 90 degrees, a4c: diameters of table 8.2.
            "4, false, 350, 10, 5, 15, 10, 7, 5",
            "5, false, 350, 12, 5, 15, 10, 10, 5",
            "4, false, 450, 15, 7, 20, 15, 9, 7",
            "5, true, 350, 5, 3, 12, 7, 7, 3",
            "4, true, 350, 5, 3, 12, 7, 5, 3"
        })
        void table82(
                double d,
                boolean drilled,
                double rho,
                double a1,
                double a2,
                double a3t,
                double a3c,
                double a4t,
                double a4c) {
            Spacings along = drilled ? Spacings.predrilled(d, 0) : Spacings.undrilled(d, 0, rho);
            Spacings across = drilled ? Spacings.predrilled(d, Math.PI / 2) : Spacings.undrilled(d, Math.PI / 2, rho);
            assertThat(along.alongMm() / d).isCloseTo(a1, within(1e-9));
            assertThat(along.acrossMm() / d).isCloseTo(a2, within(1e-9));
            assertThat(along.loadedEndMm() / d).isCloseTo(a3t, within(1e-9));
            assertThat(along.freeEndMm() / d).isCloseTo(a3c, within(1e-9));
            assertThat(across.loadedEdgeMm() / d).isCloseTo(a4t, within(1e-9));
            assertThat(across.freeEdgeMm() / d).isCloseTo(a4c, within(1e-9));
        }

        @Test
        void yieldTheoryAgreesWithTheUsModesThatShareItsMechanics() {
            // Both codes rest on Johansen's mechanics: with equal timbers and penetrations, mode c here and mode II of
            // the
            // NDS (table 12.3.1A) are fh t d (root 2 - 1), mode a is Im. An outside check of the algebra.
            Johansen j = Johansen.of(18.93494, 45, 18.93494, 45, 4, 6616.5, 0, 0);
            assertThat(j.cN()).isCloseTo(18.93494 * 45 * 4 * (Math.sqrt(2) - 1), withPercentage(1e-6));
            NdsYield us = NdsYield.of(4, 45, 45, 18.93494, 18.93494, 600, 1);
            assertThat(j.aN()).isCloseTo(us.im(), withPercentage(1e-9));
            assertThat(j.cN()).isCloseTo(us.ii(), withPercentage(1e-9));
            // Modes d to f carry 1.05, 1.05 and 1.15 on top; NDS writes the yield moment as Fyb D^3 / 6.
            double my = 600 * 64 / 6.0;
            Johansen same = Johansen.of(18.93494, 45, 30, 60, 4, my, 0, 0);
            NdsYield twin = NdsYield.of(4, 60, 45, 30, 18.93494, 600, 1);
            assertThat(same.dN() / 1.05).isCloseTo(twin.iiis(), withPercentage(1e-9));
            assertThat(same.eN() / 1.05).isCloseTo(twin.iiim(), withPercentage(1e-9));
            assertThat(same.fN() / 1.15).isCloseTo(twin.iv(), withPercentage(1e-9));
        }
    }

    /** Worked through apart from this code with the formulas of EN 1995-1-1; not printed anywhere. */
    @Nested
    class Pinned {
        @Test
        void aNail() {
            double fh = Johansen.embedment(350, 4);
            double my = Johansen.yieldMoment(600, 4);
            double fax = Eurocode5Joint.nailWithdrawal(350) * 4 * 45;
            Johansen j = Johansen.of(fh, 45, fh, 45, 4, my, fax, 0.15);
            assertThat(fh).isCloseTo(18.93494, within(5e-6));
            assertThat(my).isCloseTo(6616.50, within(5e-3));
            assertThat(fax).isCloseTo(441.0, within(0.05));
            assertThat(j.aN()).isCloseTo(3408.29, within(5e-3));
            assertThat(j.cN()).isCloseTo(1411.76, within(5e-3));
            assertThat(j.dN()).isCloseTo(1342.59, within(5e-3));
            assertThat(j.fN()).isCloseTo(1151.30, within(5e-3));
            assertThat(j.resistanceN()).isCloseTo(1261.55, within(5e-3));
            assertThat(j.mode()).isEqualTo('f');
        }

        @Test
        void aScrew() {
            double fh = Johansen.embedment(350, 3.52);
            Johansen j = Johansen.of(fh, 28, fh, 52, 3.52, Johansen.yieldMoment(600, 3.52), 0, 1);
            assertThat(j.aN()).isCloseTo(1939.19, within(5e-3));
            assertThat(j.bN()).isCloseTo(3601.35, within(5e-3));
            assertThat(j.cN()).isCloseTo(1234.66, within(5e-3));
            assertThat(j.dN()).isCloseTo(846.32, within(5e-3));
            assertThat(j.eN()).isCloseTo(1354.54, within(5e-3));
            assertThat(j.fN()).isCloseTo(932.36, within(5e-3));
            assertThat(j.mode()).isEqualTo('d');
        }

        @Test
        void slipModuli() {
            Eurocode5Joint screw = new Eurocode5Joint(TestTerms.screw(5, 80), 28, 100, C24, C24, DrivenInto.SIDE_GRAIN);
            Eurocode5Joint nail =
                    new Eurocode5Joint(Fastener.smoothNail(4, 90), 45, 100, C24, C24, DrivenInto.SIDE_GRAIN);
            assertThat(screw.slipModulus()).isCloseTo(1871.18, within(5e-3));
            assertThat(nail.slipModulus()).isCloseTo(869.76, within(5e-3));
        }

        @ParameterizedTest
        @CsvSource({"6, 50, 350, 15.5699", "8, 60, 350, 13.2403"})
        void screwWithdrawal(double d, double lef, double rho, double value) {
            assertThat(Eurocode5Joint.withdrawalStrength(d, lef, rho)).isCloseTo(value, within(5e-5));
        }
    }

    @Nested
    class Limits {
        @Test
        void endGrainAndSmoothNailsCarryNoPull() {
            Eurocode5Joint end = new Eurocode5Joint(TestTerms.screw(6, 90), 25, 500, C24, C24, DrivenInto.END_GRAIN);
            Eurocode5Joint nail =
                    new Eurocode5Joint(Fastener.smoothNail(4, 90), 25, 50, C24, C24, DrivenInto.SIDE_GRAIN);
            assertThat(end.withdrawalN(Working.SILENT)).isZero();
            assertThat(nail.withdrawalN(Working.SILENT)).isZero();
            FastenerJoint corner = RuleSet.EUROCODE.joint(
                    TestTerms.screw(6, 90), 25, Grade.dry("C24"), 500, Grade.dry("C24"), DrivenInto.END_GRAIN);
            assertThat(corner.holdsPull()).isFalse();
            assertThat(corner.utilisation(0, 10, 2, LoadDuration.PERMANENT, Working.SILENT))
                    .isGreaterThan(100);
        }

        @Test
        void theWithdrawalFormulaHoldsFromSixToTwelveMillimetres() {
            assertThat(new Eurocode5Joint(TestTerms.screw(5, 80), 25, 50, C24, C24, DrivenInto.SIDE_GRAIN)
                            .isInFormulaRange())
                    .isFalse();
            assertThat(new Eurocode5Joint(TestTerms.screw(6, 80), 25, 55, C24, C24, DrivenInto.SIDE_GRAIN)
                            .isInFormulaRange())
                    .isTrue();
            assertThat(new Eurocode5Joint(TestTerms.screw(14, 80), 25, 55, C24, C24, DrivenInto.SIDE_GRAIN)
                            .isInFormulaRange())
                    .isFalse();
        }

        @Test
        void aShortThreadCarriesNoPull() {
            assertThat(new Eurocode5Joint(TestTerms.screw(6, 60), 25, 55, C24, C24, DrivenInto.SIDE_GRAIN)
                            .withdrawalN(Working.SILENT))
                    .isZero();
        }

        @Test
        void aBoardWithoutAStampIsTakenAsC14AndSaysSo() {
            Timber board = RuleSet.EUROCODE.timber(Grade.wet(null));
            assertThat(board.e0Mean()).isEqualTo(7000);
            assertThat(board.creepFactor()).isEqualTo(4);
            assertThat(English.METRIC.text(board.basis()))
                    .isEqualTo(
                            "no grade is stamped: assumed to be C14, the lowest class; a board with large knots or sloping grain can be weaker");
            assertThat(StrengthClass.named("Q99")).isEqualTo(Optional.empty());
        }
    }
}
