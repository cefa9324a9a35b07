package borderwright.engine.assembly.order;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.survey.Outline;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What about a box's place and its inside changes the order in which it is built.
 *
 * @param nearWalls its sides behind which a house, wall, fence or hedge leaves no room for a drill, 0 first
 * @param finish of its outer faces
 * @param lining of its walls
 * @param bed that it stands on
 */
public record Surroundings(List<Integer> nearWalls, Finish finish, Lining lining, Bed bed) {
    /** A person with a drill needs this much room behind a wall, mm (common practice, no source). */
    public static final double DRILL_ROOM_MM = 450;

    /** What lies askew to a side by more than 60 degrees is beside it, not behind it. */
    private static final double BEHIND = 0.5;

    public Surroundings {
        nearWalls = List.copyOf(nearWalls);
    }

    /** Whether the outer faces are brushed. */
    public enum Finish {
        NONE,
        BRUSHED
    }

    /** Whether the walls are lined before the box is filled. */
    public enum Lining {
        NONE,
        LINER
    }

    /** What walls that were built elsewhere are moved onto. */
    public enum Bed {
        DUG,
        HARD
    }

    /** Whether sides are brushed before the walls are moved into their place, where no brush reaches them later. */
    public boolean areSidesBrushedFirst() {
        return !nearWalls.isEmpty() && finish == Finish.BRUSHED;
    }

    /**
     * The sides of a box with less than {@link #DRILL_ROOM_MM} behind their middle.
     *
     * @param box its outside corners, mm
     * @param border with what stands along its edges
     */
    public static List<Integer> nearWalls(Ring box, Outline border) {
        SortedSet<Integer> near = new TreeSet<>();
        for (int edge = 0; edge < border.edges().size(); edge++) {
            if (border.edges().get(edge).kind().givesAccess()) {
                continue;
            }
            List<Point> places = border.placesAlong(edge);
            for (int i = 0; i + 1 < places.size(); i++) {
                Segment wall = new Segment(places.get(i), places.get(i + 1));
                for (int side = 0; side < box.size(); side++) {
                    if (isBehind(box, side, wall)) {
                        near.add(side);
                    }
                }
            }
        }
        return List.copyOf(near);
    }

    private static boolean isBehind(Ring box, int side, Segment wall) {
        Point middle = box.side(side).middle();
        Point gap = wall.nearestTo(middle).minus(middle);
        Point outwards = box.direction(side).left().times(-1);
        return gap.lengthMm() < DRILL_ROOM_MM && gap.dot(outwards) >= BEHIND * gap.lengthMm();
    }
}
