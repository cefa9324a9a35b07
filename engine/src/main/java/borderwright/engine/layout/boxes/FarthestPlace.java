package borderwright.engine.layout.boxes;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The place in a polygon that lies farthest from the nearest of some segments.
 *
 * <p>With one segment it is a corner of the polygon, exactly: the distance from a convex set is a convex function. With
 * several, branch and bound over squares: over a square the distance exceeds that at its middle by no more than half
 * its diagonal; squares that cannot beat the best place found by more than {@link #FINE_MM} are dropped.
 */
public final class FarthestPlace {
    /** How near the answer is, mm. */
    static final double FINE_MM = 2;

    private final Ring ring;
    private final List<Segment> segments;
    private double bestMm;

    /** A square by its middle and half its side; {@code boundMm} is the most that the distance can be in it. */
    private record Square(Point middle, double halfMm, double boundMm) {}

    private FarthestPlace(Ring ring, List<Segment> segments) {
        this.ring = ring;
        this.segments = segments;
        this.bestMm =
                ring.corners().stream().mapToDouble(this::distanceMm).max().orElse(0);
    }

    /** Distance of the farthest place, mm: exact for one segment, else to within {@link #FINE_MM}, not more. */
    public static double distanceMm(Ring ring, List<Segment> segments) {
        FarthestPlace place = new FarthestPlace(ring, segments);
        if (segments.size() > 1) {
            place.search();
        }
        return place.bestMm;
    }

    /** Whether every corner lies within a distance of one and the same segment, and so the whole polygon does. */
    static boolean isWithin(Ring ring, List<Segment> segments, double distanceMm) {
        return segments.stream()
                .anyMatch(s -> ring.corners().stream().allMatch(corner -> s.distanceMm(corner) <= distanceMm));
    }

    private double distanceMm(Point point) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : segments) {
            least = Math.min(least, segment.distanceMm(point));
        }
        return least;
    }

    private void search() {
        PriorityQueue<Square> squares = new PriorityQueue<>(Comparator.comparingDouble(Square::boundMm)
                .reversed()
                .thenComparingDouble(s -> s.middle.xMm())
                .thenComparingDouble(s -> s.middle.yMm()));
        squares.add(around());
        while (!squares.isEmpty()) {
            Square square = squares.remove();
            if (square.boundMm <= bestMm + FINE_MM) {
                return;
            }
            double half = square.halfMm / 2;
            for (int i = 0; i < 4; i++) {
                Point middle = square.middle.plus(new Point(i % 2 == 0 ? -half : half, i < 2 ? -half : half));
                Square part = square(middle, half);
                if (part.boundMm > bestMm + FINE_MM && ring.contains(middle, -half * StrictMath.sqrt(2))) {
                    squares.add(part);
                }
            }
        }
    }

    private Square square(Point middle, double halfMm) {
        double distance = distanceMm(middle);
        if (distance > bestMm && ring.contains(middle, 0)) {
            bestMm = distance;
        }
        return new Square(middle, halfMm, distance + halfMm * StrictMath.sqrt(2));
    }

    private Square around() {
        double x0 = ring.corners().stream().mapToDouble(Point::xMm).min().orElse(0);
        double x1 = ring.corners().stream().mapToDouble(Point::xMm).max().orElse(0);
        double y0 = ring.corners().stream().mapToDouble(Point::yMm).min().orElse(0);
        double y1 = ring.corners().stream().mapToDouble(Point::yMm).max().orElse(0);
        return square(new Point((x0 + x1) / 2, (y0 + y1) / 2), Math.max(x1 - x0, y1 - y0) / 2);
    }
}
