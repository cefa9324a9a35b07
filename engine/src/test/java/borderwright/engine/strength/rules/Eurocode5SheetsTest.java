package borderwright.engine.strength.rules;

import static borderwright.engine.strength.rules.Eurocode5Test.timber;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestTerms;
import borderwright.engine.strength.timber.DrivenInto;
import borderwright.engine.strength.timber.Effects;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.ServiceClass;
import borderwright.engine.strength.timber.TimberSection;
import borderwright.engine.strength.worked.SheetLine;
import borderwright.engine.strength.worked.Working;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What a check by EN 1995-1-1 writes down. */
class Eurocode5SheetsTest {
    @Nested
    class Sheets {
        @Test
        void aSheetCanBeFollowedByHand() {
            // 25 x 150 flat, 50 Nm permanent: W = 150 x 25^2 / 6 = 15625; sigma 3.2; kh 1.3; fm,d = 1.3 x 0.5 x 14 /
            // 1.3.
            Working working = Working.sheet();
            double use = timber("C14", ServiceClass.SC3)
                    .bending(new TimberSection(25, 150), new Effects(50_000, 0, 0), LoadDuration.PERMANENT, working);
            assertThat(use).isCloseTo(3.2 / 7, within(1e-12));
            assertThat(working.lines())
                    .extracting(SheetLine::symbol)
                    .containsExactly("M,flat", "W,flat", "sigma,flat", "fm,flat,k", "kmod", "kh", "fm,flat,d", "use");
            assertThat(working.lines().get(6).value().orElseThrow()).isCloseTo(7, within(1e-12));
        }

        @Test
        void silentAndWrittenGiveTheSame() {
            FastenerJoint joint = RuleSet.EUROCODE.joint(
                    TestTerms.screw(5, 70), 25, Grade.wet(null), 50, Grade.wet("C16"), DrivenInto.SIDE_GRAIN);
            double silent = joint.utilisation(100, 300, 2, LoadDuration.PERMANENT, Working.SILENT);
            Working working = Working.sheet();
            assertThat(joint.utilisation(100, 300, 2, LoadDuration.PERMANENT, working))
                    .isEqualTo(silent);
            assertThat(working.lines().get(working.lines().size() - 1).value().orElseThrow())
                    .isEqualTo(silent);
        }
    }
}
