package borderwright.engine.layout;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.message.English;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Rows that stand free in a field: where every box is, worked out by hand. */
class FreeRowsTest {
    private static List<String> notes(Layout layout) {
        return layout.notes().stream().map(English.METRIC::text).toList();
    }

    private static final Offset<Double> EXACT = Offset.offset(1e-6);
    private static final LayoutRules RULES = new LayoutRules(38, 150, 4800, OptionalDouble.empty());
    private static final OutlineEdge FENCE = new OutlineEdge(EdgeKind.FENCE, 20, 0, 0);
    private static final Outline FIELD = new Outline(
            Ring.rectangle(0, 0, 20_000, 12_000),
            List.of("A", "B", "C", "D"),
            Collections.nCopies(4, FENCE),
            GroundHeights.LEVEL);

    private static Layout lay(RunSpec... requests) {
        return BorderLayout.lay(FIELD, List.of(requests), RULES, Set.of());
    }

    private static RunRequests beds(String along) {
        return RunRequests.along(along)
                .name("rows")
                .planters(4)
                .length(1200, 1200)
                .depth(2400)
                .height(300)
                .separate(1000)
                .gaps(2000, 0)
                .reach(1200)
                .rows(3000, 2, 900);
    }

    @Test
    void boxesHaveTheSaidLengthAndStandWhereTheyAreToldTo() {
        Layout layout = lay(beds("A B").spec());

        assertThat(layout.unmet()).isEmpty();
        assertThat(layout.boxes())
                .extracting(FootprintPlan::name)
                .containsExactly("RO1", "RO2", "RO3", "RO4", "RO5", "RO6", "RO7", "RO8");
        for (int i = 0; i < 8; i++) {
            double x = 2000 + (i % 4) * 2200;
            double y = 3000 + (i / 4) * 3300;
            assertThat(extent(layout.boxes().get(i).outline())).isEqualTo(List.of(x, y, x + 1200, y + 2400));
        }
        assertThat(layout.openings()).isEmpty();
    }

    @Test
    void fromTheOtherCornerTheyStandTheOtherWayRound() {
        Layout layout = lay(beds("B A").spec());

        assertThat(extent(layout.boxes().get(0).outline())).isEqualTo(List.of(16_800.0, 3000.0, 18_000.0, 5400.0));
        assertThat(extent(layout.boxes().get(3).outline())).isEqualTo(List.of(10_200.0, 3000.0, 11_400.0, 5400.0));
    }

    @Test
    void aFenceFarAwayNeitherFacesThemNorKeepsAnybodyFromReachingThem() {
        Layout layout = lay(beds("A B").spec());

        layout.boxes()
                .forEach(box ->
                        box.sides().forEach(side -> assertThat(side.facing()).isEqualTo(EdgeKind.OPEN)));
        assertThat(notes(layout)).noneMatch(note -> note.contains("hardest to reach") || note.contains("no side"));
    }

    @Test
    void aRowThatFindsNoRoomIsLeftOutAndSaidNotMadeNarrower() {
        Layout layout = lay(beds("A B").rows(3000, 3, 900).spec());

        assertThat(layout.boxes())
                .hasSize(8)
                .allSatisfy(box -> assertThat(depth(box)).isCloseTo(2400, EXACT));
        assertThat(layout.unmet())
                .singleElement()
                .satisfies(p -> assertThat(p.sentence(English.METRIC)).contains("A-B"));
    }

    @Test
    void moreThanTheRowHoldsIsSaidWithHowManyFit() {
        Layout layout = lay(beds("A B").planters(10).rows(3000, 1, 900).spec());

        assertThat(layout.boxes()).hasSize(8);
        assertThat(layout.unmet()).singleElement().satisfies(p -> {
            assertThat(p.sentence(English.METRIC))
                    .contains("10 planters of 1200 mm do not fit in the row 3000 mm from A-B");
            assertThat(p.right(English.METRIC)).contains("at most 8");
        });
    }

    @Test
    void joinedRowsKeepTheSaidLengthFromDividerToDivider() {
        Layout layout = lay(RunRequests.along("A B")
                .name("rows")
                .planters(3)
                .length(1500, 1500)
                .depth(900)
                .gaps(1000, 0)
                .rows(4000, 1, 900)
                .spec());

        assertThat(layout.boxes()).singleElement().satisfies(box -> {
            assertThat(extent(box.outline())).isEqualTo(List.of(1000.0, 4000.0, 5500.0, 4900.0));
            assertThat(box.dividers())
                    .extracting(d -> (double) Math.round(d.from().xMm()))
                    .containsExactly(2500.0, 4000.0);
        });
    }

    private static double depth(FootprintPlan box) {
        List<Double> extent = extent(box.outline());
        return extent.get(3) - extent.get(1);
    }

    private static List<Double> extent(Ring ring) {
        return List.of(
                round(ring.corners().stream().mapToDouble(Point::xMm).min().orElseThrow()),
                round(ring.corners().stream().mapToDouble(Point::yMm).min().orElseThrow()),
                round(ring.corners().stream().mapToDouble(Point::xMm).max().orElseThrow()),
                round(ring.corners().stream().mapToDouble(Point::yMm).max().orElseThrow()));
    }

    private static double round(double mm) {
        return Math.round(mm * 1e6) / 1e6;
    }
}
