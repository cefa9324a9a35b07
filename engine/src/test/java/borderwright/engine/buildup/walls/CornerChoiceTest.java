package borderwright.engine.buildup.walls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.draft.LapOrMitre;
import borderwright.engine.garden.vocabulary.CornerStyle;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The corner table of the design: what a saw that tilts 45 degrees makes at inside angles of 45 to 315. */
class CornerChoiceTest {
    private static final Set<CornerStyle> LAP = EnumSet.of(CornerStyle.LAPPED);
    private static final Set<CornerStyle> MITRE = EnumSet.of(CornerStyle.MITRED);
    private static final Set<CornerStyle> EITHER = EnumSet.allOf(CornerStyle.class);

    @Nested
    class Table {
        @Test
        void everyHalfDegreeFromFortyFiveToThreeHundredAndFifteen() {
            for (double corner = 45; corner <= 315; corner += 0.5) {
                assertThat(offered(corner)).as("corner of %s degrees", corner).isEqualTo(table(corner));
                assertThat(CornerChoice.of(StrictMath.toRadians(corner), CornerStyle.LAPPED, 45)
                                .inRange())
                        .as("corner of %s degrees", corner)
                        .isTrue();
            }
        }

        private static Set<CornerStyle> offered(double corner) {
            Set<CornerStyle> styles = EnumSet.noneOf(CornerStyle.class);
            for (CornerStyle spec : CornerStyle.values()) {
                styles.add(
                        CornerChoice.of(StrictMath.toRadians(corner), spec, 45).style());
            }
            return styles;
        }

        /** 45 to 90 lap only; 90 to 135 either; 135 to 225 mitre only; 225 to 270 either; 270 to 315 lap only. */
        private static Set<CornerStyle> table(double corner) {
            if (corner < 90 || corner > 270) {
                return LAP;
            }
            return corner > 135 && corner < 225 ? MITRE : EITHER;
        }

        @ParameterizedTest(name = "{0}")
        @CsvSource({
            "45, 45, 67.5", "62, 28, 59", "90, 0, 45", "108, 18, 36", "127, 37, 26.5", "135, 45, 22.5",
            "180, 90, 0", "225, 45, 22.5", "233, 37, 26.5", "270, 0, 45", "298, 28, 59", "315, 45, 67.5"
        })
        void tiltsFromSquare(double corner, double lapped, double mitred) {
            double angle = StrictMath.toRadians(corner);
            assertThat(LapOrMitre.lappedTiltDeg(angle)).isCloseTo(lapped, within(1e-9));
            assertThat(LapOrMitre.mitredTiltDeg(angle)).isCloseTo(mitred, within(1e-9));
        }
    }

    @Nested
    class Limits {
        @Test
        void aSawThatTiltsLessLeavesLess() {
            CornerChoice choice = CornerChoice.of(StrictMath.toRadians(60), CornerStyle.LAPPED, 20);
            assertThat(choice.style()).isEqualTo(CornerStyle.LAPPED);
            assertThat(choice.tiltDeg()).isCloseTo(30, within(1e-9));
            assertThat(choice.inRange()).isFalse();
        }

        @Test
        void aSawThatTiltsMoreMitresASharperCorner() {
            assertThat(CornerChoice.of(StrictMath.toRadians(86), CornerStyle.MITRED, 47)
                            .style())
                    .isEqualTo(CornerStyle.MITRED);
        }

        @Test
        void aTenthOfADegreeIsNotSeenOnAScale() {
            assertThat(CornerChoice.of(StrictMath.toRadians(89.9), CornerStyle.MITRED, 45)
                            .style())
                    .isEqualTo(CornerStyle.MITRED);
            assertThat(CornerChoice.of(StrictMath.toRadians(89.5), CornerStyle.MITRED, 45)
                            .style())
                    .isEqualTo(CornerStyle.LAPPED);
        }
    }
}
