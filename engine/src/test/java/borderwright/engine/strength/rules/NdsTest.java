package borderwright.engine.strength.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestTerms;
import borderwright.engine.message.English;
import borderwright.engine.strength.timber.DrivenInto;
import borderwright.engine.strength.timber.Effects;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.NdsFactors;
import borderwright.engine.strength.timber.NdsWithdrawal;
import borderwright.engine.strength.timber.NdsYield;
import borderwright.engine.strength.timber.TimberSection;
import borderwright.engine.strength.worked.Working;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NdsTest {
    private static final double N_PER_LB = 4.4482216152605;

    @Nested
    class Published {
        @Test
        void wetDouglasFir() {
            // Purdue University, CE479 wood design example, fall 2006 (NDS 2001): 2x8 No.1 DFL, wet, snow: 1173, 932,
            // 201
            // psi. CD 1.15.
            double cf = NdsFactors.sizeInBending(1.5, 7.25);
            assertThat(1000 * 1.15 * NdsFactors.wetInBending(1000 * cf) * cf).isCloseTo(1173, within(0.5));
            assertThat(675 * 1.15 * cf).isCloseTo(932, within(0.51));
            assertThat(180 * 1.15 * NdsFactors.WET_IN_SHEAR).isCloseTo(201, within(0.5));
        }

        @Test
        void aFloorJoist() {
            // HUD, Residential Structural Design Guide, 2nd ed. (2017), example 5.1: S 13.14, I 47.63, Fb' 1345 psi;
            // spans
            // 14.865 ft in bending and 40.8 ft in shear for 40 psf at 16 in.
            TimberSection joist = new TimberSection(1.5, 7.25);
            double fb = 975 * 1.15 * NdsFactors.sizeInBending(1.5, 7.25);
            double w = 40 * 16 / 12.0;
            assertThat(joist.edgeModulusMm3()).isCloseTo(13.14, within(5e-3));
            assertThat(joist.edgeMm4()).isCloseTo(47.63, within(6e-3));
            assertThat(fb).isCloseTo(1345, within(0.6));
            assertThat(Math.sqrt(8 * fb * joist.edgeModulusMm3() / (12 * w))).isCloseTo(14.865, within(2e-3));
            assertThat(75 * 2.0 * joist.areaMm2() / 1.5 * 2 / w).isCloseTo(40.8, within(0.05));
        }

        @Test
        void aWoodScrewPulled() {
            // Engineering handbooks' example: G 0.45, No.10 (0.190 in): 109 lb/in, printed cut off, not rounded.
            assertThat(Math.floor(NdsWithdrawal.woodScrew(0.45, 0.190))).isEqualTo(109);
        }

        @Test
        void aNailPulled() {
            // AWC, Structural Wood Design Examples, E2.1a: 0.131 in nail, SPF G 0.42, 2.395 in: 20.67 lb/in, 49.5 lb.
            assertThat(NdsWithdrawal.smoothNail(0.42, 0.131)).isCloseTo(20.67, within(5e-3));
            assertThat(NdsWithdrawal.smoothNail(0.42, 0.131) * 2.395).isCloseTo(49.5, within(0.05));
        }

        @ParameterizedTest
        @CsvSource({"4650, 141", "5550, 154", "3500, 122", "3350, 120"})
        void sixteenPennyNailInShear(double fe, double printed) {
            // NDS 2005 table 11N: 16d common nail, 0.162 in, 1 1/2 in side member, G 0.50, 0.55, 0.43 and 0.42.
            NdsYield yield = NdsYield.of(0.162, 1.62, 1.5, fe, fe, NdsYield.bendingYield(0.162), 2.2);
            assertThat(yield.z()).isCloseTo(printed, within(0.5));
            assertThat(yield.z()).isEqualTo(yield.iv());
        }

        @Test
        void aShortSixteenPennyNail() {
            // SEAINT list, November 2009: penetration 1.25 in of 1.62, CD 1.6: 174 lb.
            double z = NdsYield.of(0.162, 1.62, 1.5, 4650, 4650, 90_000, 2.2).z();
            assertThat(z * 1.25 / 1.62 * 1.6).isCloseTo(174, within(0.5));
        }

        @Test
        void aTenPennyNailThroughAThinSide() {
            // AWC solved example: 10d 0.148 x 3 in, DFL, 3/4 in side, 2 1/4 in in the main: 0.467488 kN, mode IIIs.
            double fe = NdsYield.bearing(0.5);
            NdsYield yield = NdsYield.of(0.148, 2.25, 0.75, fe, fe, 90_000, NdsYield.reduction(0.148));
            assertThat(yield.z() * N_PER_LB / 1000).isCloseTo(0.467488, within(5e-7));
            assertThat(yield.z()).isEqualTo(yield.iiis());
        }

        @ParameterizedTest
        @CsvSource({"0.50, 4650", "0.55, 5550", "0.43, 3500", "0.42, 3350", "0.36, 2550"})
        void dowelBearing(double g, double tabulated) {
            // NDS 2018 table 12.3.3, rounded to 50 psi (table values from memory).
            assertThat(NdsYield.bearing(g)).isCloseTo(tabulated, within(25.0));
        }

        @ParameterizedTest
        @CsvSource({"3.5, 1.5, 1.15", "5.5, 1.3, 1.1", "7.25, 1.2, 1.05", "9.25, 1.1, 1.0", "11.25, 1.0, 1.0"})
        void sizeFactors(double width, double bending, double compression) {
            // NDS Supplement table 4A, adjustment factors, 2 in thick.
            assertThat(NdsFactors.sizeInBending(1.5, width)).isEqualTo(bending);
            assertThat(NdsFactors.sizeInCompression(width)).isEqualTo(compression);
        }
    }

    @Nested
    class Limits {
        private final Grade none = Grade.wet(null);

        @Test
        void endGrainAndSmoothNailsCarryNoLastingPull() {
            assertThat(RuleSet.NDS
                            .joint(TestTerms.screw(5, 80), 38, none, 90, none, DrivenInto.END_GRAIN)
                            .holdsPull())
                    .isFalse();
            assertThat(RuleSet.NDS
                            .joint(Fastener.smoothNail(4, 90), 38, none, 90, none, DrivenInto.SIDE_GRAIN)
                            .holdsPull())
                    .isFalse();
            assertThat(RuleSet.NDS
                            .joint(TestTerms.screw(5, 80), 38, none, 90, none, DrivenInto.SIDE_GRAIN)
                            .holdsPull())
                    .isTrue();
        }

        @Test
        void aTwoByEightLaidFlatByHand() {
            // Hem-Fir No.2 2x8 flat, permanent, wet: Fb CF = 1020 <= 1150 so CM 1; 850 x 0.9 x 1.2 x 1.15 = 1055.7 psi.
            // A moment of 2000 lb in on S = 7.25 x 1.5^2 / 6 = 2.71875 in3 gives 735.63 psi.
            TimberSection board = new TimberSection(1.5 * 25.4, 7.25 * 25.4);
            double use = RuleSet.NDS
                    .timber(Grade.wet("Hem-Fir No.2"))
                    .bending(board, new Effects(2000 * N_PER_LB * 25.4, 0, 0), LoadDuration.PERMANENT, Working.SILENT);
            assertThat(use).isCloseTo(735.632 / 1055.7, within(1e-5));
        }

        @Test
        void aBoardWithoutAStampTakesTheLowestEntry() {
            assertThat(English.IMPERIAL.text(RuleSet.NDS.timber(none).basis()))
                    .startsWith("no grade is stamped: assumed to be Northern Species No.3");
        }
    }
}
