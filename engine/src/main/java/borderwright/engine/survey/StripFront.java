package borderwright.engine.survey;

import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The front of a strip: the line along the wall moved square off by the depth, its bends mitred. */
final class StripFront {
    private StripFront() {}

    /**
     * The front corner of each corner along the wall, in the same order; empty when the depth does not fit inside a bend.
     *
     * @param wall corners along the wall, the strip on their left
     */
    static Optional<List<Point>> of(List<Point> wall, double depthMm) {
        List<Point> front = new ArrayList<>();
        for (int i = 0; i < wall.size(); i++) {
            Point before = direction(wall, Math.max(i - 1, 0));
            Point after = direction(wall, Math.min(i, wall.size() - 2));
            double turn = 1 + before.dot(after);
            if (turn < 1e-6) {
                return Optional.empty();
            }
            // the mitre: square off both edges at once
            Point mitre = before.left().plus(after.left()).times(depthMm / turn);
            front.add(wall.get(i).plus(mitre));
        }
        for (int i = 0; i + 1 < wall.size(); i++) {
            if (front.get(i + 1).minus(front.get(i)).dot(direction(wall, i)) <= 0) {
                return Optional.empty();
            }
        }
        return Optional.of(front);
    }

    private static Point direction(List<Point> wall, int edge) {
        return wall.get(edge + 1).minus(wall.get(edge)).unit();
    }
}
