package borderwright.engine.buildup.draft;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ground inside the walls, planter by planter.
 *
 * <p>The ring inside the walls is cut along both faces of each divider in turn. Of the two parts the one without the
 * next divider is the planter; after the last, the one that does not touch the divider before. With a single divider the
 * first planter is the one on the right hand of its line from front to back, as runs are laid with their border on the
 * left.
 */
public final class PlanterRings {
    private PlanterRings() {}

    /** The ring inside walls of a thickness, or nothing where they meet before they close. */
    public static Optional<Ring> inside(List<SideFrame> sides, double wallMm) {
        List<Point> corners = new ArrayList<>();
        for (SideFrame side : sides) {
            if (side.innerEnd(wallMm) - side.innerStart(wallMm) < 1) {
                return Optional.empty();
            }
            corners.add(side.at(side.innerStart(wallMm), wallMm));
        }
        if (Ring.signedAreaMm2(corners) <= 0) {
            return Optional.empty();
        }
        Ring ring = new Ring(corners);
        return ring.toJts().isSimple() ? Optional.of(ring) : Optional.empty();
    }

    /** The planters' rings in order. */
    public static List<Ring> of(Ring inside, List<DividerStrip> dividers) {
        List<Ring> planters = new ArrayList<>();
        Edges rest = Edges.of(inside);
        for (int k = 0; k < dividers.size(); k++) {
            DividerStrip divider = dividers.get(k);
            Edges right = rest.rightOf(divider, k);
            Edges left = rest.leftOf(divider, k);
            boolean rightIsFirst;
            if (k + 1 < dividers.size()) {
                rightIsFirst = left.has(dividers.get(k + 1).fromMiddle());
            } else {
                rightIsFirst = k == 0 || right.touches(k - 1);
            }
            planters.add((rightIsFirst ? right : left).ring());
            rest = rightIsFirst ? left : right;
        }
        planters.add(rest.ring());
        return planters;
    }

    /**
     * A ring whose sides remember where they come from.
     *
     * @param corners in order
     * @param tags of side {@code i}, from corner {@code i}: the box's side, or {@code -1 - k} for divider k
     */
    private record Edges(List<Point> corners, List<Integer> tags) {
        static Edges of(Ring ring) {
            List<Integer> tags = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                tags.add(i);
            }
            return new Edges(ring.corners(), tags);
        }

        Ring ring() {
            return new Ring(corners);
        }

        boolean touches(int divider) {
            return tags.contains(-1 - divider);
        }

        boolean has(Point onBoundary) {
            for (int i = 0; i < corners.size(); i++) {
                if (distanceMm(onBoundary, corners.get(i), corners.get((i + 1) % corners.size())) < 0.5) {
                    return true;
                }
            }
            return false;
        }

        /** From the divider's start round to its end, closed along its right face. */
        Edges rightOf(DividerStrip divider, int k) {
            return between(divider.fromSide(), divider.fromRight(), divider.toSide(), divider.toRight(), k);
        }

        /** From the divider's end round to its start, closed along its left face. */
        Edges leftOf(DividerStrip divider, int k) {
            return between(divider.toSide(), divider.toLeft(), divider.fromSide(), divider.fromLeft(), k);
        }

        private Edges between(int firstTag, Point first, int lastTag, Point last, int divider) {
            int start = edgeAt(firstTag, first);
            int end = edgeAt(lastTag, last);
            List<Point> points = new ArrayList<>();
            List<Integer> marks = new ArrayList<>();
            points.add(first);
            marks.add(firstTag);
            for (int i = start; i != end; ) {
                i = (i + 1) % corners.size();
                points.add(corners.get(i));
                marks.add(tags.get(i));
            }
            points.add(last);
            marks.add(-1 - divider);
            return new Edges(points, marks);
        }

        /** The edge of that tag nearest to a point: a side may be in several parts by now. */
        private int edgeAt(int tag, Point p) {
            int best = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < corners.size(); i++) {
                double d = distanceMm(p, corners.get(i), corners.get((i + 1) % corners.size()));
                if (tags.get(i) == tag && d < least) {
                    least = d;
                    best = i;
                }
            }
            return best;
        }
    }

    static boolean holds(Ring ring, Point p) {
        boolean in = false;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.corner(i);
            Point b = ring.corner(i + 1);
            if (a.yMm() > p.yMm() != b.yMm() > p.yMm()) {
                double x = a.xMm() + (p.yMm() - a.yMm()) / (b.yMm() - a.yMm()) * (b.xMm() - a.xMm());
                in ^= p.xMm() < x;
            }
        }
        return in;
    }

    static double borderMm(Ring ring, Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            least = StrictMath.min(least, distanceMm(p, ring.corner(i), ring.corner(i + 1)));
        }
        return least;
    }

    private static double distanceMm(Point p, Point a, Point b) {
        Point ab = b.minus(a);
        double t = StrictMath.max(0, StrictMath.min(1, p.minus(a).dot(ab) / ab.dot(ab)));
        return p.distanceMm(a.towards(b, t));
    }
}
