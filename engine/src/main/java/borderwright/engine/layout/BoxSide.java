package borderwright.engine.layout;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One side of a box that is being drawn up, by the corner where it starts.
 *
 * @param from the corner, mm
 * @param role which side it is
 * @param leg the leg that it lies along, where it does
 */
record BoxSide(Point from, SidePlan.Role role, @Nullable Leg leg) {
    static Ring ring(List<BoxSide> sides) {
        return new Ring(sides.stream().map(BoxSide::from).toList());
    }
}
