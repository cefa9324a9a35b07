package borderwright.engine.assembly;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.SectionSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Everything of a box as it lies on the bench.
 *
 * @param box the box
 * @param walls its walls in the order of its sides, then its dividers
 * @param floors its floors, planter by planter
 */
public record BoxBench(Box box, List<WallBench> walls, List<FloorBench> floors) {
    public BoxBench {
        walls = List.copyOf(walls);
        floors = List.copyOf(floors);
    }

    /**
     * Lays a box out.
     *
     * @param box with its pieces; one without any gives nothing
     * @param sections of all its pieces
     */
    public static BoxBench of(Box box, List<SectionSpec> sections) {
        if (box.pieces().isEmpty()) {
            return new BoxBench(box, List.of(), List.of());
        }
        BoxParts parts = new BoxParts(box, sections);
        List<WallBench> walls = new ArrayList<>(new WallBenchMaker(parts).walls());
        walls.addAll(new DividerBenchMaker(parts).dividers());
        return new BoxBench(box, walls, new FloorBenchMaker(parts).floors());
    }

    /** Every line of fixings. */
    public List<FixingLine> fixings() {
        return Stream.concat(
                        walls.stream().flatMap(wall -> wall.fixings().stream()),
                        floors.stream().flatMap(floor -> floor.fixings().stream()))
                .toList();
    }
}
