package borderwright.engine.layout.plan;

import borderwright.engine.geometry.Ring;
import java.util.List;

/**
 * One box on the plan: a simple polygon of walls, divided into one or more planters by dividers.
 *
 * <p>A joined run is one box with dividers; a separate planter is a box with one bay. Where the bed level steps, a new
 * box begins.
 *
 * @param name short and unique, such as {@code F1} or {@code F1-F4}; printed on every piece
 * @param run name of the run that it came from
 * @param outline the outer faces of its walls, anticlockwise, mm
 * @param sides side {@code i} runs from corner {@code i} to the next
 * @param dividers across the box, in order along the run; none touches another
 * @param planters names of its planters in order: one more than dividers
 * @param bedMm level of the bed under the bottom course, mm above the datum
 * @param heightMm height of the finished wall above the bed, mm
 * @param platformMm height of the false floor above the bed, mm; 0 for none
 * @param capped whether it has a capping ring
 */
public record FootprintPlan(
        String name,
        String run,
        Ring outline,
        List<SidePlan> sides,
        List<DividerLine> dividers,
        List<String> planters,
        double bedMm,
        double heightMm,
        double platformMm,
        boolean capped) {
    public FootprintPlan {
        sides = List.copyOf(sides);
        dividers = List.copyOf(dividers);
        planters = List.copyOf(planters);
        if (sides.size() != outline.size()) {
            throw new IllegalArgumentException(
                    "one side for each of " + outline.size() + " corners, got " + sides.size());
        }
        if (planters.size() != dividers.size() + 1) {
            throw new IllegalArgumentException(
                    "one more planter than dividers, got " + planters.size() + " and " + dividers.size());
        }
    }

    /** The same box with a false floor at another height, mm above the bed; 0 for none. */
    public FootprintPlan withPlatform(double otherMm) {
        return new FootprintPlan(name, run, outline, sides, dividers, planters, bedMm, heightMm, otherMm, capped);
    }
}
