package borderwright.engine.buildup;

import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.FootprintPlan;
import borderwright.engine.problem.Problem;
import java.util.List;

/**
 * One box with all its pieces.
 *
 * @param plan where it stands
 * @param courses heights and make-up of its wall, bottom first
 * @param pieces in build order
 * @param fixings by kind
 * @param inside plan outline inside the walls of each planter, mm, in the order of {@code plan.planters()}
 * @param soilDepthMm from the bed or platform to the rim, mm
 * @param notes what a builder should know, each a sentence with numbers
 * @param unmet what could not be built as wished, with the reason and what else to do
 */
public record Box(
        FootprintPlan plan,
        List<Course> courses,
        List<Piece> pieces,
        List<Fixing> fixings,
        List<Ring> inside,
        double soilDepthMm,
        List<String> notes,
        List<Problem> unmet) {
    public Box {
        courses = List.copyOf(courses);
        pieces = List.copyOf(pieces);
        fixings = List.copyOf(fixings);
        inside = List.copyOf(inside);
        notes = List.copyOf(notes);
        unmet = List.copyOf(unmet);
    }

    /**
     * One course of the wall.
     *
     * @param number from the bottom, 1 first
     * @param bottomMm height of its underside above the datum, mm, boards as they arrive
     * @param topMm height of its top, mm
     * @param dryTopMm height of its top when the boards below and its own have dried, mm
     */
    public record Course(int number, double bottomMm, double topMm, double dryTopMm) {}

    /**
     * Screws or other fixings of one kind in one use.
     *
     * @param item name on the shopping list, such as {@code screw 5 x 70}
     * @param use what they hold, in words
     * @param count how many
     * @param pilotMm pilot hole in the receiving piece, mm
     * @param clearanceMm clearance hole in the fixed piece, mm
     * @param countersinkMm diameter of the countersink, mm
     */
    public record Fixing(
            String item, String use, int count, double pilotMm, double clearanceMm, double countersinkMm) {}
}
