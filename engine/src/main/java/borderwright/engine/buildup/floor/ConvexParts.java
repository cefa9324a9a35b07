package borderwright.engine.buildup.floor;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a ring at its re-entrant corners into parts without any, each cut halving the corner: as a floor that turns a
 * corner is mitred.
 */
final class ConvexParts {
    /** A cut that would end within this of a corner ends in the corner, mm. */
    private static final double SNAP_MM = 60;

    private static final double STRAIGHT = 1e-6;

    private ConvexParts() {}

    static List<Ring> of(Ring ring) {
        for (int i = 0; i < ring.size(); i++) {
            if (ring.insideAngle(i) > StrictMath.PI + STRAIGHT) {
                return cut(ring, i);
            }
        }
        return List.of(ring);
    }

    private static List<Ring> cut(Ring ring, int corner) {
        Point from = ring.corner(corner);
        double half = ring.insideAngle(corner) / 2;
        Point along = ring.direction(corner);
        Point ray = along.times(StrictMath.cos(half)).plus(along.left().times(StrictMath.sin(half)));
        int hit = -1;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            if (i == corner || i == Math.floorMod(corner - 1, ring.size())) {
                continue;
            }
            double t = along(from, ray, ring.corner(i), ring.corner(i + 1));
            if (t > 0 && t < nearest) {
                nearest = t;
                hit = i;
            }
        }
        if (hit < 0) {
            return List.of(ring);
        }
        Point end = from.plus(ray.times(nearest));
        if (end.distanceMm(ring.corner(hit)) < SNAP_MM) {
            end = ring.corner(hit);
        } else if (end.distanceMm(ring.corner(hit + 1)) < SNAP_MM) {
            hit = (hit + 1) % ring.size();
            end = ring.corner(hit);
        }
        List<Ring> parts = new ArrayList<>(of(new Ring(upTo(ring, corner, hit, end))));
        parts.addAll(of(new Ring(onFrom(ring, hit, corner, end))));
        return parts;
    }

    /** From the corner round to the start of the side that is hit, and along it to the cut's end. */
    private static List<Point> upTo(Ring ring, int corner, int hit, Point end) {
        List<Point> corners = new ArrayList<>();
        for (int i = corner; i != hit; i = (i + 1) % ring.size()) {
            corners.add(ring.corner(i));
        }
        corners.add(ring.corner(hit));
        if (!end.equals(ring.corner(hit))) {
            corners.add(end);
        }
        return corners;
    }

    /** From the cut's end round to the corner. */
    private static List<Point> onFrom(Ring ring, int hit, int corner, Point end) {
        List<Point> corners = new ArrayList<>();
        corners.add(end);
        for (int i = (hit + 1) % ring.size(); i != corner; i = (i + 1) % ring.size()) {
            corners.add(ring.corner(i));
        }
        corners.add(ring.corner(corner));
        return corners;
    }

    /** How far along a ray a segment lies; infinite where it does not cross it. */
    private static double along(Point from, Point ray, Point a, Point b) {
        double low = ray.cross(a.minus(from));
        double high = ray.cross(b.minus(from));
        if (low > 0 == high > 0) {
            return Double.POSITIVE_INFINITY;
        }
        return a.towards(b, low / (low - high)).minus(from).dot(ray);
    }
}
