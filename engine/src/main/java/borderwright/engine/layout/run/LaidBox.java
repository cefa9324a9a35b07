package borderwright.engine.layout.run;

import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import java.util.List;

/**
 * A box with what later checks of the layout need to know of it.
 *
 * @param plan the box
 * @param cells the ground of each of its planters, walls included, in the plan's order
 * @param terms the run that it belongs to
 */
public record LaidBox(FootprintPlan plan, List<Ring> cells, RunTerms terms) {
    public LaidBox {
        cells = List.copyOf(cells);
    }
}
