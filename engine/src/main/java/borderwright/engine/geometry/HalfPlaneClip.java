package borderwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cuts a polygon along a line and keeps one side of it.
 *
 * <p>The method is one step of Sutherland and Hodgman's: walk round, keep corners on the wanted side, add a corner
 * wherever a side crosses the line. The answer is exact for every polygon whose kept part is in one piece: always for a
 * convex one. A concave polygon that falls apart along the line would come back with its parts joined by sides lying on
 * the line: do not ask that of it.
 *
 * <p>Source: I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping, Communications of the ACM 17 (1), 1974.
 */
public final class HalfPlaneClip {
    /** Corners nearer together than this are one, mm; far below what can be cut. */
    private static final double SAME_MM = 1e-7;

    private HalfPlaneClip() {}

    /** The part of {@code ring} to the left of {@code line}; empty when nothing with an area is left. */
    public static Optional<Ring> keepLeft(Ring ring, Line line) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point here = ring.corner(i);
            Point next = ring.corner(i + 1);
            double hereMm = line.offsetMm(here);
            double nextMm = line.offsetMm(next);
            if (hereMm >= 0) {
                add(kept, here);
            }
            if ((hereMm > 0 && nextMm < 0) || (hereMm < 0 && nextMm > 0)) {
                add(kept, here.towards(next, hereMm / (hereMm - nextMm)));
            }
        }
        while (kept.size() > 1 && kept.get(kept.size() - 1).distanceMm(kept.get(0)) < SAME_MM) {
            kept.remove(kept.size() - 1);
        }
        if (kept.size() < 3 || Ring.signedAreaMm2(kept) <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Ring(kept));
    }

    /** The part of {@code ring} to the right of {@code line}; empty when nothing with an area is left. */
    public static Optional<Ring> keepRight(Ring ring, Line line) {
        return keepLeft(ring, line.reversed());
    }

    private static void add(List<Point> corners, Point corner) {
        if (corners.isEmpty() || corners.get(corners.size() - 1).distanceMm(corner) >= SAME_MM) {
            corners.add(corner);
        }
    }
}
