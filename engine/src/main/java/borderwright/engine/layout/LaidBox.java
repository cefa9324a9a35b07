package borderwright.engine.layout;

import borderwright.engine.geometry.Ring;
import java.util.List;

/**
 * A box with what later checks of the layout need to know of it.
 *
 * @param plan the box
 * @param cells the ground of each of its planters, walls included, in the plan's order
 * @param terms the run that it belongs to
 */
record LaidBox(FootprintPlan plan, List<Ring> cells, RunTerms terms) {
    LaidBox {
        cells = List.copyOf(cells);
    }
}
