package borderwright.engine.layout.run;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.layout.room.Leg;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One side of a box that is being drawn up, by the corner where it starts.
 *
 * @param from the corner, mm
 * @param role which side it is
 * @param leg the leg that it lies along, where it does
 */
public record BoxSide(
        Point from, SidePlan.Role role, @Nullable Leg leg) {
    public static Ring ring(List<BoxSide> sides) {
        return new Ring(sides.stream().map(BoxSide::from).toList());
    }
}
