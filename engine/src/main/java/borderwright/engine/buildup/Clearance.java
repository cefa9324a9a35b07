package borderwright.engine.buildup;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import java.util.ArrayList;
import java.util.List;

/**
 * The solids placed so far, to ask whether another one has room.
 *
 * <p>Convex plans only. Two convex polygons are apart when a line along a side of one of them separates them (separating
 * axes); touching counts as apart.
 */
final class Clearance {
    /** Overlaps thinner than this are rounding, mm. */
    private static final double TOUCH_MM = 0.02;

    private final List<Taken> taken = new ArrayList<>();

    private record Taken(Prism prism, double minX, double minY, double maxX, double maxY) {
        static Taken of(Prism prism) {
            double minX = Double.POSITIVE_INFINITY;
            double minY = Double.POSITIVE_INFINITY;
            double maxX = Double.NEGATIVE_INFINITY;
            double maxY = Double.NEGATIVE_INFINITY;
            for (Point p : prism.plan().corners()) {
                minX = StrictMath.min(minX, p.xMm());
                minY = StrictMath.min(minY, p.yMm());
                maxX = StrictMath.max(maxX, p.xMm());
                maxY = StrictMath.max(maxY, p.yMm());
            }
            return new Taken(prism, minX, minY, maxX, maxY);
        }

        boolean mayMeet(Taken o) {
            return minX < o.maxX
                    && o.minX < maxX
                    && minY < o.maxY
                    && o.minY < maxY
                    && prism.bottomMm() < o.prism.topMm() - TOUCH_MM
                    && o.prism.bottomMm() < prism.topMm() - TOUCH_MM;
        }
    }

    void take(Prism prism) {
        taken.add(Taken.of(prism));
    }

    boolean isFree(Prism wanted) {
        return meeting(wanted).isEmpty();
    }

    /** The solids already placed that would overlap {@code wanted}, in order of placing. */
    List<Prism> meeting(Prism wanted) {
        Taken asked = Taken.of(wanted);
        List<Prism> met = new ArrayList<>();
        for (Taken other : taken) {
            if (asked.mayMeet(other) && overlap(wanted, other.prism)) {
                met.add(other.prism);
            }
        }
        return met;
    }

    private static boolean overlap(Prism a, Prism b) {
        List<Point> ours = a.plan().corners();
        List<Point> theirs = b.plan().corners();
        return !separated(ours, theirs) && !separated(theirs, ours);
    }

    /** Whether a side of {@code a} has all of {@code b} on its outside. */
    private static boolean separated(List<Point> a, List<Point> b) {
        for (int i = 0; i < a.size(); i++) {
            Point from = a.get(i);
            Point side = a.get((i + 1) % a.size()).minus(from);
            double inside = TOUCH_MM * side.lengthMm();
            boolean apart = true;
            for (int k = 0; k < b.size() && apart; k++) {
                apart = side.cross(b.get(k).minus(from)) <= inside;
            }
            if (apart) {
                return true;
            }
        }
        return false;
    }
}
