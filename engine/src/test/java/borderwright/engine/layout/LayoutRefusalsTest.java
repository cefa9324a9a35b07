package borderwright.engine.layout;

import static borderwright.engine.layout.BorderLayoutTest.RULES;
import static borderwright.engine.layout.BorderLayoutTest.lay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Runs that cannot be laid out as requested. */
class LayoutRefusalsTest {
    @Nested
    class Refusals {
        private static void refused(Outline outline, RunSpec spec, String code, String sentence) {
            Layout layout = lay(outline, spec);
            assertThat(layout.unmet()).extracting(Problem::code).containsExactly(code);
            assertThat(layout.unmet().get(0).sentence(English.METRIC)).isEqualTo(sentence);
        }

        @Test
        void aDepthThatDoesNotFitIsLaidOutAsDeepAsDoes() {
            refused(
                    Borders.strip(9605, 594),
                    RunRequests.along("A B").planters(8).spec(),
                    "layout-depth-does-not-fit",
                    "Planters 600 mm from front to back do not fit along A-B: with the gaps kept, 574 mm is the most; that is laid out"
                            + " instead. Give at most 574 mm as front to back, or make the gaps smaller.");
        }

        @Test
        void aDepthBelowTheLeastEdgeIsLeftOut() {
            Layout layout = BorderLayout.lay(
                    Borders.strip(9605, 594),
                    List.of(RunRequests.along("A B").planters(8).depth(200).spec()),
                    new LayoutRules(47, 150, 4800),
                    Set.of());
            assertThat(layout.boxes()).isEmpty();
            assertThat(layout.unmet().get(0).sentence(English.METRIC))
                    .isEqualTo(
                            "Planters 200 mm from front to back are less than the least side of a box, 235 mm with walls of 47 mm;"
                                    + " the run is left out. Give at least 235 mm as front to back.");
        }

        @Test
        void morePlantersThanFitAreReducedToThoseThatDo() {
            refused(
                    Borders.strip(2040, 640),
                    RunRequests.along("A B").planters(12).spec(),
                    "layout-planters",
                    "12 planters do not fit along A-B: 2000 mm is free, and a planter needs at least 200 mm. 10 are laid"
                            + " out. Give at most 10 planters.");
        }

        @Test
        void aRangeOfLengthsThatNoNumberMeetsIsSaid() {
            refused(
                    Borders.strip(2540, 640),
                    RunRequests.along("A B").length(1300, 2400).spec(),
                    "layout-length",
                    "Along A-B no whole number of planters has a length from 1300 mm to 2400 mm; 2 of 1250 mm come nearest."
                            + " Widen the range to take in 1250 mm.");
        }

        @Test
        void aRangeForDepthIsNotPlannedYet() {
            Layout layout = lay(
                    Borders.strip(9605, 640),
                    RunRequests.along("A B").planters(8).depth(400, 600).spec());
            assertThat(layout.unmet().get(0).sentence(English.METRIC))
                    .isEqualTo(
                            "A range for front to back is not planned yet; the smaller, 400 mm, is used. Give one length.");
            assertThat(layout.boxes().get(0).outline().sideMm(1)).isCloseTo(400, within(1e-9));
        }

        @Test
        void cornersThatAreNotNeighboursAreNamed() {
            refused(
                    Borders.strip(9605, 640),
                    RunRequests.along("A C").planters(8).spec(),
                    "layout-along",
                    "The run 'fence run' is to follow A C, which are not neighbouring corners of the border in turn. The corners in order round the border are A B C D; name at least two neighbours.");
        }

        @Test
        void anImperialGardenIsToldInFeetAndInches() {
            Layout layout = BorderLayout.lay(
                    Borders.strip(9605, 594),
                    List.of(RunRequests.along("A B").planters(8).spec()),
                    RULES,
                    Set.of());
            assertThat(English.IMPERIAL.text(layout.notes().get(0)))
                    .isEqualTo("Along A-B: 8 planters, each 3' 11-1/16\" from divider to divider.");
        }

        @Test
        void aNarrowPlaceIsLeftOut() {
            Outline bottle = Borders.of(
                    new Ring(List.of(
                            new Point(0, 0),
                            new Point(6000, 0),
                            new Point(6000, 400),
                            new Point(4000, 400),
                            new Point(4000, 2000),
                            new Point(0, 2000))),
                    List.of(
                            Borders.edge(EdgeKind.FENCE),
                            Borders.edge(EdgeKind.LAWN),
                            Borders.edge(EdgeKind.WALL),
                            Borders.edge(EdgeKind.WALL),
                            Borders.edge(EdgeKind.LAWN),
                            Borders.edge(EdgeKind.LAWN)),
                    GroundHeights.LEVEL);
            Layout layout = lay(bottle, RunRequests.along("A B").planters(3).spec());
            assertThat(layout.unmet()).extracting(Problem::code).containsExactly("layout-narrow");
            assertThat(layout.boxes().get(0).outline().corner(1).xMm()).isCloseTo(3980, within(1.0));
        }
    }
}
