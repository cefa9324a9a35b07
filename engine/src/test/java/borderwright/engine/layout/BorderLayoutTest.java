package borderwright.engine.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.EdgeKind;
import borderwright.engine.garden.RunWish;
import borderwright.engine.geometry.Point;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.survey.Outline;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BorderLayoutTest {
    private static final LayoutRules RULES = new LayoutRules(25, 150, 4800);

    private static Layout lay(Outline outline, RunWish... runs) {
        Layout layout = BorderLayout.lay(outline, List.of(runs), RULES, UnitSystem.METRIC);
        LayoutVerifier.verify(outline, layout, RULES, List.of(runs), "");
        return layout;
    }

    @Nested
    class StraightRuns {
        @Test
        void aJoinedRunIsOneBoxWithDividersBetweenItsGaps() {
            Layout layout = lay(
                    Borders.strip(9605, 640), Wishes.along("A B").planters(8).wish());
            assertThat(layout.unmet()).isEmpty();
            FootprintPlan box = layout.boxes().get(0);
            assertThat(layout.boxes()).hasSize(1);
            assertThat(box.name()).isEqualTo("F1-F8");
            assertThat(box.planters()).containsExactly("F1", "F2", "F3", "F4", "F5", "F6", "F7", "F8");
            assertThat(box.outline().corners())
                    .containsExactly(new Point(20, 20), new Point(9585, 20), new Point(9585, 620), new Point(20, 620));
            assertThat(box.dividers().get(0).from().xMm()).isCloseTo(20 + 9565 / 8.0, within(1e-9));
            assertThat(layout.notes()).containsExactly("Along A-B: 8 planters, each 1196 mm from divider to divider.");
        }

        @Test
        void separatePlantersStandApartAndAreNamedFromThePersonsStart() {
            Layout layout = lay(
                    Borders.strip(6000, 640),
                    Wishes.along("B A").length(1200, 1200).separate(30).wish());
            assertThat(layout.boxes()).hasSize(5);
            assertThat(layout.boxes().get(0).name()).isEqualTo("F1");
            assertThat(layout.boxes().get(0).outline().corner(1).xMm()).isEqualTo(5980);
            assertThat(layout.boxes().get(4).outline().corner(0).xMm()).isCloseTo(20, within(1e-9));
            double gap = layout.boxes().get(0).outline().corner(0).xMm()
                    - layout.boxes().get(1).outline().corner(1).xMm();
            assertThat(gap).isCloseTo(30, within(1e-9));
        }
    }

    @Nested
    class Corners {
        @ParameterizedTest
        @ValueSource(
                doubles = {
                    45, 46, 60, 62, 89, 90, 91, 127, 135, 160, 169, 171, 179, 180.5, 189, 191, 200, 225, 270, 300, 315
                })
        void everyAngleIsBuiltInEveryManner(double degrees) {
            Outline corner = Borders.corner(degrees, EdgeKind.WALL);
            for (RunWish.Turn turn : RunWish.Turn.values()) {
                Layout joined =
                        lay(corner, Wishes.along("A B C").planters(3).turn(turn).wish());
                assertThat(joined.unmet()).as("%s %s", degrees, turn).isEmpty();
                Layout separate = lay(
                        corner,
                        Wishes.along("C B A")
                                .planters(3)
                                .separate(20)
                                .turn(turn)
                                .wish());
                assertThat(separate.unmet()).as("%s %s", degrees, turn).isEmpty();
            }
        }

        @ParameterizedTest
        @ValueSource(doubles = {30, 44.9, 315.1, 330})
        void beyondTheAnglesThatCanBeBuiltAGapIsLeftAndSaid(double degrees) {
            Layout layout = lay(
                    Borders.corner(degrees, EdgeKind.WALL),
                    Wishes.along("A B C").planters(1).depth(300).wish());
            assertThat(layout.unmet()).extracting("code").containsExactly("layout-corner-angle");
            assertThat(layout.boxes()).hasSize(2);
        }
    }
}
