package borderwright.pack.sheets;

import borderwright.pack.bench.FloorView;
import borderwright.pack.bench.WallView;
import java.util.List;

/**
 * Every distinct wall, divider and floor as it lies on the bench.
 *
 * @param walls and dividers
 * @param floors of planters
 */
public record BenchSheet(List<WallView> walls, List<FloorView> floors) implements Sheet {
    public BenchSheet {
        walls = List.copyOf(walls);
        floors = List.copyOf(floors);
    }

    @Override
    public String title() {
        return "At the bench: walls and floors";
    }

    @Override
    public Part part() {
        return Part.BENCH;
    }
}
