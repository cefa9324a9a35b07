package borderwright.engine.layout.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FacingGapTest {
    private static FootprintPlan box(String name, double x0, double y0, double x1, double y1) {
        return TestBoxes.box(name, Ring.rectangle(x0, y0, x1, y1), 0, 300, 0).plan();
    }

    /** A terrace of 7 by 5 m whose edges, from y = 0 round anticlockwise, are of these kinds. */
    private static Outline outline(EdgeKind... kinds) {
        return new Outline(
                Ring.rectangle(0, 0, 7000, 5000),
                List.of("A", "B", "C", "D"),
                Stream.of(kinds).map(kind -> new OutlineEdge(kind, 0, 0, 0)).toList(),
                GroundHeights.LEVEL);
    }

    private static final Outline OPEN = outline(EdgeKind.OPEN, EdgeKind.OPEN, EdgeKind.OPEN, EdgeKind.OPEN);

    @Test
    void anAisleBetweenTwoBedsIsGivenOnce() {
        List<FacingGap> gaps =
                FacingGap.of(List.of(box("L", 30, 30, 630, 4000), box("M", 2075, 1000, 3275, 3000)), OPEN);

        assertThat(gaps).hasSize(1);
        FacingGap aisle = gaps.get(0);
        assertThat(aisle.box()).isEqualTo("L");
        assertThat(aisle.widthMm()).isCloseTo(1445, within(1e-6));
        assertThat(aisle.across().from().yMm())
                .as("at the middle of where they face each other")
                .isCloseTo(2000, within(1e-6));
    }

    @Test
    void aBedBetweenHidesTheFartherOne() {
        List<FacingGap> gaps = FacingGap.of(
                List.of(
                        box("L", 0, 1000, 600, 2000),
                        box("R", 5000, 1000, 5600, 2000),
                        box("M", 2000, 1000, 3200, 2000)),
                OPEN);

        assertThat(gaps).extracting(FacingGap::widthMm).containsExactly(1400.0, 1800.0);
        assertThat(gaps).extracting(FacingGap::box).containsExactly("L", "R");
    }

    @Test
    void aBedThatTouchesHidesTheFartherOneToo() {
        assertThat(FacingGap.of(
                        List.of(box("L", 0, 0, 1000, 600), box("R", 2000, 0, 3000, 600), box("M", 1000, 0, 2000, 600)),
                        OPEN))
                .isEmpty();
    }

    @Test
    void aWallFacesABedAndAnOpenEdgeDoesNot() {
        Outline walled = outline(EdgeKind.HOUSE, EdgeKind.OPEN, EdgeKind.OPEN, EdgeKind.WALL);

        List<FacingGap> gaps = FacingGap.of(List.of(box("L", 40, 60, 640, 2000)), walled);

        assertThat(gaps).extracting(FacingGap::faces).containsExactly("A B", "A D");
        assertThat(gaps).extracting(FacingGap::widthMm).containsExactly(60.0, 40.0);
    }

    @Test
    void bedsThatDoNotFaceEachOtherHaveNoGap() {
        assertThat(FacingGap.of(List.of(box("L", 0, 0, 600, 1000), box("M", 1000, 1200, 2000, 2000)), OPEN))
                .isEmpty();
    }
}
