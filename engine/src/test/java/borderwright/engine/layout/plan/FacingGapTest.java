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

    /** The same with a wall along y = 0 that bulges out of the border by a rise, or into it where that is negative. */
    private static Outline curved(double riseMm) {
        return new Outline(
                Ring.rectangle(0, 0, 7000, 5000),
                List.of("A", "B", "C", "D"),
                List.of(
                        new OutlineEdge(EdgeKind.WALL, 20, 0, riseMm),
                        new OutlineEdge(EdgeKind.OPEN, 0, 0, 0),
                        new OutlineEdge(EdgeKind.OPEN, 0, 0, 0),
                        new OutlineEdge(EdgeKind.OPEN, 0, 0, 0)),
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

    /** Radius (3500^2 + 200^2) / 400 = 30,725 mm; 1,000 mm beside its middle the arc has come back by 16.3 mm. */
    @Test
    void toACurvedWallTheGapIsMeasuredWhereItIsLeast() {
        List<FootprintPlan> beds = List.of(box("L", 2500, 500, 4500, 1100));

        List<FacingGap> outward = FacingGap.of(beds, curved(200));
        assertThat(outward).hasSize(1);
        assertThat(outward.get(0).faces()).isEqualTo("A B");
        assertThat(outward.get(0).widthMm()).isCloseTo(500 + 200 - 16.3, within(0.5));
        assertThat(outward.get(0).across().from().xMm()).isIn(2500.0, 4500.0);

        List<FacingGap> inward = FacingGap.of(beds, curved(-200));
        assertThat(inward).hasSize(1);
        assertThat(inward.get(0).widthMm()).isCloseTo(500 - 200, within(1e-6));
        assertThat(inward.get(0).across().from().xMm()).isCloseTo(3500, within(1e-6));
    }
}
