package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.message.Message;
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
 * @param notes what a builder should know
 * @param unmet what could not be built as requested, with the reason and what else to do
 */
public record Box(
        FootprintPlan plan,
        List<Course> courses,
        List<Piece> pieces,
        List<Fixing> fixings,
        List<Ring> inside,
        double soilDepthMm,
        List<Message> notes,
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
     * @param hold which joint they make
     * @param use what they hold
     * @param count how many
     * @param diameterMm thread diameter of a screw, mm; 0 for what is no screw
     * @param lengthMm length of a screw, mm; 0 for what is no screw
     * @param pilotMm pilot hole in the receiving piece, mm
     * @param clearanceMm clearance hole in the fixed piece, mm
     * @param countersinkMm diameter of the countersink, mm
     */
    public record Fixing(
            String item,
            Hold hold,
            Message use,
            int count,
            double diameterMm,
            double lengthMm,
            double pilotMm,
            double clearanceMm,
            double countersinkMm) {}

    /** Which joint of a box fixings make. */
    public enum Hold {
        /** Walls to posts and braces: {@link #perJoint} through each board into each upright. */
        WALL_TO_UPRIGHT(2),
        /** A tie to the brace beside it, at each end. */
        TIE_TO_BRACE(3),
        /** A divider to the upright beside it, in each board. */
        DIVIDER_TO_UPRIGHT(2),
        /** The two uprights of a corner to each other, in each course. */
        UPRIGHTS_TOGETHER(2),
        /** Through the lapping board into the end of the other, at each lapped corner in each course. */
        LAP(2),
        /** A strap across the two uprights of a corner, in each course. */
        CORNER_STRAP(1),
        /** A strap to the two uprights: half of these in each leg. */
        STRAP_TO_UPRIGHT(4),
        /** A bracket where a tie meets a brace askew. */
        TIE_BRACKET(1),
        /** Capping down into the top edge of the walls, at each place. */
        CAPPING_TO_WALL(1),
        /** Platform: nothing that holds the walls up. */
        OTHER(1);

        private final int perJoint;

        Hold(int perJoint) {
            this.perJoint = perJoint;
        }

        /** How many one joint has, as the builder sets them (common practice, no source). */
        public int perJoint() {
            return perJoint;
        }
    }
}
