package borderwright.engine.layout;

import static borderwright.engine.layout.BorderLayoutTest.lay;
import static borderwright.engine.layout.BorderLayoutTest.notes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.message.English;
import borderwright.engine.survey.Outline;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs that turn corners. */
class LayoutCornersTest {
    @Nested
    class Corners {
        @ParameterizedTest
        @ValueSource(
                doubles = {
                    45, 46, 60, 62, 89, 90, 91, 127, 135, 160, 169, 171, 179, 180.5, 189, 191, 200, 225, 270, 300, 315
                })
        void everyAngleIsBuiltInEveryManner(double degrees) {
            Outline corner = Borders.corner(degrees, EdgeKind.WALL);
            for (CornerTurn turn : CornerTurn.values()) {
                Layout joined = lay(
                        corner,
                        RunRequests.along("A B C").planters(3).turn(turn).spec());
                assertThat(joined.unmet()).as("%s %s", degrees, turn).isEmpty();
                Layout separate = lay(
                        corner,
                        RunRequests.along("C B A")
                                .planters(3)
                                .separate(20)
                                .turn(turn)
                                .spec());
                assertThat(separate.unmet()).as("%s %s", degrees, turn).isEmpty();
            }
        }

        @ParameterizedTest
        @ValueSource(doubles = {30, 44.9, 315.1, 330})
        void beyondTheAnglesThatCanBeBuiltAGapIsLeftAndSaid(double degrees) {
            Layout layout = lay(
                    Borders.corner(degrees, EdgeKind.WALL),
                    RunRequests.along("A B C").planters(1).depth(300).spec());
            assertThat(layout.unmet()).extracting("code").containsExactly("layout-corner-angle");
            assertThat(layout.boxes()).hasSize(2);
        }
    }

    @Nested
    class AcuteCorners {
        @Test
        void theTipBeyondReachIsCutOffByABluntNoseAndLeftAsGravel() {
            Layout layout = lay(
                    Borders.corner(62, EdgeKind.WALL),
                    RunRequests.along("A B C")
                            .length(1200, 1200)
                            .depth(550)
                            .reach(700)
                            .spec());
            assertThat(layout.boxes()).hasSize(1);
            assertThat(layout.openings()).hasSize(1);
            assertThat(English.METRIC.text(layout.openings().get(0).why()))
                    .startsWith(
                            "Tip out of reach at corner B, left as gravel: reach is 700 mm; a blunt nose 442 mm long"
                                    + " ends the planter 368 mm before the corner.");
            assertThat(notes(layout)).noneMatch(note -> note.contains("hardest to reach"));
            Ring ring = layout.boxes().get(0).outline();
            assertThat(ring.size()).isEqualTo(7);
            assertThat(StrictMath.toDegrees(ring.insideAngle(1))).isCloseTo(90 + 31, within(1e-9));
        }

        @Test
        void aSquareCornerKeepsItsTipAndSaysHowFarItIs() {
            Layout layout = lay(
                    Borders.corner(90, EdgeKind.WALL),
                    RunRequests.along("A B C").planters(3).reach(700).spec());
            assertThat(layout.openings()).isEmpty();
            assertThat(notes(layout))
                    .contains("F4: the farthest place lies 849 mm from where a person stands; reach is 700 mm.");
        }

        @Test
        void aGapAtACornerStatesItsSize() {
            Layout layout = lay(
                    Borders.corner(90, EdgeKind.WALL),
                    RunRequests.along("A B C")
                            .planters(3)
                            .turn(CornerTurn.LEAVE_OPEN)
                            .spec());
            assertThat(layout.boxes()).extracting(FootprintPlan::name).containsExactly("F1-F3", "F4-F6");
            assertThat(layout.openings())
                    .extracting(o -> English.METRIC.text(o.why()))
                    .containsExactly("Gap at corner B: the planters' square ends stand 20 mm apart at the nearest."
                            + " 0.38 m2 stays open.");
        }

        @Test
        void oneCornerMayBeTreatedOtherwise() {
            Outline square = Borders.strip(6000, 6000);
            Layout layout = lay(
                    square,
                    RunRequests.along("A B C D")
                            .planters(2)
                            .turn(CornerTurn.LEAVE_OPEN)
                            .turn("C", CornerTurn.INFILL)
                            .spec());
            assertThat(layout.boxes()).extracting(FootprintPlan::name).containsExactly("F1-F2", "F3-F4", "F5", "F6-F7");
        }
    }
}
