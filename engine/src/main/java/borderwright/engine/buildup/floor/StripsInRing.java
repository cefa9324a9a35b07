package borderwright.engine.buildup.floor;

import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The straight pieces of one band that lie inside a ring.
 *
 * <p>The band's middle line is inside the ring between every second crossing. Where the ring's side at such a crossing
 * goes right across the band and not too steeply, the piece ends along it; else it ends square before it. Any other part
 * of the ring that reaches into the band pushes the nearer end back. So a piece never crosses the ring; it may leave a
 * small corner open.
 */
final class StripsInRing {
    /** Shorter pieces are left out, mm. */
    private static final double LEAST_MM = 120;

    private final Point origin;
    private final Point along;
    private final double nearMm;
    private final double farMm;
    private final double clearMm;
    private final double steepest;

    /**
     * A band.
     *
     * @param origin where s and w are 0
     * @param along unit vector of s
     * @param nearMm w of its near line
     * @param farMm w of its far line
     * @param clearMm room between its pieces' ends and the ring
     * @param steepestDeg ends further from square than this are cut square
     */
    StripsInRing(Point origin, Point along, double nearMm, double farMm, double clearMm, double steepestDeg) {
        this.origin = origin;
        this.along = along;
        this.nearMm = nearMm;
        this.farMm = farMm;
        this.clearMm = clearMm;
        this.steepest = StrictMath.tan(StrictMath.toRadians(steepestDeg));
    }

    /** Part of a side of the ring inside the band, from w0 to w1. */
    private record Reach(double s0, double w0, double s1, double w1, double middle) {
        double least() {
            return StrictMath.min(s0, s1);
        }

        double most() {
            return StrictMath.max(s0, s1);
        }
    }

    List<Strip> in(Ring ring) {
        List<Reach> reaches = reaches(ring);
        List<Reach> crossings = reaches.stream()
                .filter(reach -> !Double.isNaN(reach.middle))
                .sorted(Comparator.comparingDouble(Reach::middle))
                .toList();
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            Strip strip = between(crossings.get(i), crossings.get(i + 1), reaches);
            if (strip.shortestMm() >= LEAST_MM) {
                strips.add(strip);
            }
        }
        return strips;
    }

    private List<Reach> reaches(Ring ring) {
        List<Reach> reaches = new ArrayList<>();
        double mid = (nearMm + farMm) / 2;
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.corner(i).minus(origin);
            Point q = ring.corner(i + 1).minus(origin);
            double ps = p.dot(along);
            double pw = p.dot(along.left());
            double qs = q.dot(along);
            double qw = q.dot(along.left());
            double low = StrictMath.max(nearMm, StrictMath.min(pw, qw));
            double high = StrictMath.min(farMm, StrictMath.max(pw, qw));
            if (low >= high) {
                continue;
            }
            double slope = (qs - ps) / (qw - pw);
            boolean crosses = pw > mid != qw > mid;
            reaches.add(new Reach(
                    ps + (low - pw) * slope,
                    low,
                    ps + (high - pw) * slope,
                    high,
                    crosses ? ps + (mid - pw) * slope : Double.NaN));
        }
        return reaches;
    }

    private Strip between(Reach enter, Reach exit, List<Reach> all) {
        Strip.End left = end(enter, 1);
        Strip.End right = end(exit, -1);
        for (Reach other : all) {
            if (other.equals(enter) || other.equals(exit)) {
                continue;
            }
            double from = StrictMath.min(left.nearMm(), left.farMm());
            double to = StrictMath.max(right.nearMm(), right.farMm());
            if (other.most() + clearMm <= from || other.least() - clearMm >= to) {
                continue;
            }
            if (other.least() + other.most() < from + to) {
                left = Strip.End.square(StrictMath.max(other.most() + clearMm, greater(left)));
            } else {
                right = Strip.End.square(StrictMath.min(other.least() - clearMm, lesser(right)));
            }
        }
        return new Strip(origin, along, nearMm, farMm, left, right);
    }

    /** @param inwards 1 for a left end, -1 for a right end */
    private Strip.End end(Reach reach, int inwards) {
        double slope = (reach.s1 - reach.s0) / (reach.w1 - reach.w0);
        boolean across = reach.w0 <= nearMm + 1e-6 && reach.w1 >= farMm - 1e-6;
        if (across && StrictMath.abs(slope) <= steepest) {
            double back = inwards * clearMm * StrictMath.sqrt(1 + slope * slope);
            return new Strip.End(reach.s0 + back, reach.s1 + back);
        }
        return Strip.End.square(inwards > 0 ? reach.most() + clearMm : reach.least() - clearMm);
    }

    private static double greater(Strip.End end) {
        return StrictMath.max(end.nearMm(), end.farMm());
    }

    private static double lesser(Strip.End end) {
        return StrictMath.min(end.nearMm(), end.farMm());
    }
}
