package borderwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Moves each side of a polygon parallel to itself, sharp corners kept: the inner faces of walls from their outer faces,
 * or the front line of planters from the line of a wall.
 *
 * <p>Each corner is where its two moved sides cross, so the answer has the same corners in the same order, and side
 * {@code i} stays side {@code i}. At a straight corner (two sides in one line) both sides must move alike.
 */
public final class ParallelOffset {
    private ParallelOffset() {}

    /** All sides moved inwards by the same distance, mm; empty when a side shrinks to nothing. */
    public static Optional<Ring> inwards(Ring ring, double distanceMm) {
        List<Double> each = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            each.add(distanceMm);
        }
        return inwards(ring, each);
    }

    /**
     * Side {@code i} moved inwards by {@code distancesMm.get(i)}; negative is outwards. Empty when a side shrinks to
     * nothing or turns round: the walls would leave no room there.
     */
    public static Optional<Ring> inwards(Ring ring, List<Double> distancesMm) {
        if (distancesMm.size() != ring.size()) {
            throw new IllegalArgumentException(
                    "one distance for each of " + ring.size() + " sides, got " + distancesMm.size());
        }
        List<Point> moved = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            int before = Math.floorMod(i - 1, ring.size());
            moved.add(corner(ring, before, i, distancesMm.get(before), distancesMm.get(i)));
        }
        for (int i = 0; i < ring.size(); i++) {
            Point side = moved.get((i + 1) % moved.size()).minus(moved.get(i));
            if (side.dot(ring.direction(i)) <= 0) {
                return Optional.empty();
            }
        }
        return Ring.signedAreaMm2(moved) <= 0 ? Optional.empty() : Optional.of(new Ring(moved));
    }

    private static Point corner(Ring ring, int before, int after, double beforeMm, double afterMm) {
        Line first = new Line(ring.corner(before), ring.direction(before)).offset(beforeMm);
        Line second = new Line(ring.corner(after), ring.direction(after)).offset(afterMm);
        return first.meet(second).orElseGet(() -> second.through());
    }
}
