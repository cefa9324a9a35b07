package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.PlanGrid;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.List;

/** Finds which planter a point lies in. */
final class PlanterFinder {
    private final List<Ring> rings;
    private final PlanGrid grid = new PlanGrid();

    PlanterFinder(List<Ring> rings) {
        this.rings = rings;
        for (int i = 0; i < rings.size(); i++) {
            grid.add(i, PlanGrid.Bounds.of(rings.get(i)));
        }
    }

    /** Index of the planter that holds a point, or of the nearest. */
    int at(Point p) {
        for (int i : grid.near(PlanGrid.Bounds.of(p))) {
            if (PlanterRings.holds(rings.get(i), p)) {
                return i;
            }
        }
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rings.size(); i++) {
            double d = PlanterRings.borderMm(rings.get(i), p);
            if (d < least) {
                least = d;
                best = i;
            }
        }
        return best;
    }
}
