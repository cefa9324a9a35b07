package borderwright.engine.settingout;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class PegStringTest {
    private static final SidePlan SIDE = SidePlan.free(SidePlan.Role.FRONT, EdgeKind.OPEN, 0);

    private static FootprintPlan box(String name, String run, Ring outline) {
        return FootprintPlan.builder()
                .name(name)
                .run(run)
                .outline(outline)
                .sides(Collections.nCopies(4, SIDE))
                .planters(List.of(name))
                .bedMm(0)
                .heightMm(300)
                .build();
    }

    /** Boxes 2 m by 1 m, 1 m apart, along the x axis. */
    private static List<FootprintPlan> row(String run, int count, double y) {
        List<FootprintPlan> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boxes.add(box(run + (i + 1), run, Ring.rectangle(3000 * i, y, 3000 * i + 2000, y + 1000)));
        }
        return boxes;
    }

    private static PegList pegs(List<FootprintPlan> boxes) {
        List<PegList.Peg> pegs = new ArrayList<>();
        for (FootprintPlan box : boxes) {
            for (Point corner : box.outline().corners()) {
                pegs.add(new PegList.Peg(pegs.size() + 1, box.name(), corner, Optional.empty(), Optional.empty()));
            }
        }
        return new PegList(pegs, List.of(), KnownPoints.NONE);
    }

    @Test
    void aRowHasAStringAlongEachSideAndEveryPegOnOneOfThem() {
        List<FootprintPlan> boxes = row("N", 5, 0);

        List<PegString> strings = PegString.of(pegs(boxes), boxes);

        assertThat(strings).hasSize(2);
        assertThat(strings.get(0).first()).isEqualTo(1);
        assertThat(strings.get(0).last()).isEqualTo(18);
        assertThat(strings.get(0).stops())
                .extracting(PegString.Stop::alongMm)
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : 1, Double.class)
                .containsExactly(2000.0, 3000.0, 5000.0, 6000.0, 8000.0, 9000.0, 11000.0, 12000.0, 14000.0);
        List<Integer> all = new ArrayList<>();
        strings.forEach(string -> {
            all.add(string.first());
            string.stops().forEach(stop -> all.add(stop.peg()));
        });
        assertThat(all).doesNotHaveDuplicates().hasSize(20);
    }

    @Test
    void rowsBesideEachOtherHaveStringsOfTheirOwn() {
        List<FootprintPlan> boxes = new ArrayList<>(row("N", 4, 0));
        boxes.addAll(row("S", 4, 2500));

        assertThat(PegString.of(pegs(boxes), boxes))
                .extracting(PegString::boxes)
                .containsExactly(
                        List.of("N1", "N2", "N3", "N4"),
                        List.of("N1", "N2", "N3", "N4"),
                        List.of("S1", "S2", "S3", "S4"),
                        List.of("S1", "S2", "S3", "S4"));
    }

    @Test
    void threeBoxesAndBoxesOutOfLineHaveNone() {
        List<FootprintPlan> few = row("N", 3, 0);
        assertThat(PegString.of(pegs(few), few)).isEmpty();

        List<FootprintPlan> crooked = new ArrayList<>(row("N", 4, 0));
        crooked.set(2, box("N3", "N", Ring.rectangle(6000, 30, 8000, 1030)));
        assertThat(PegString.of(pegs(crooked), crooked)).isEmpty();
    }

    @Test
    void readingsAreStraightDistancesFromTheHook() {
        List<FootprintPlan> boxes = row("N", 6, 0);
        PegList pegs = pegs(boxes);

        for (PegString string : PegString.of(pegs, boxes)) {
            Point hook = pegs.pegs().get(string.first() - 1).at();
            string.stops()
                    .forEach(stop -> assertThat(
                                    pegs.pegs().get(stop.peg() - 1).at().distanceMm(hook))
                            .isCloseTo(stop.alongMm(), Offset.offset(1e-9)));
        }
    }
}
