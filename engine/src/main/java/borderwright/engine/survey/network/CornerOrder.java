package borderwright.engine.survey.network;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The order in which the corners go round, which tells a shape from its mirror image.
 *
 * @param corners point numbers; anticlockwise when closed; empty when nothing is known of an order
 * @param closed whether the last corner joins the first
 */
public record CornerOrder(List<Integer> corners, boolean closed) {
    /** A bend of a smaller sine is taken for straight. */
    private static final double STRAIGHT = 0.02;
    /** Tangent of the angle between two edges below which one lies on the other. */
    private static final double FOLDED = 1e-9;

    static final CornerOrder UNKNOWN = new CornerOrder(List.of(), false);

    public CornerOrder {
        corners = List.copyOf(corners);
    }

    /** Corners whose last joins the first, anticlockwise. */
    public static CornerOrder ring(List<Integer> corners) {
        return new CornerOrder(corners, true);
    }

    /** Corners of a strip, which does not come back to its first. */
    public static CornerOrder strip(List<Integer> corners) {
        return new CornerOrder(corners, false);
    }

    int edges() {
        return closed ? corners.size() : Math.max(corners.size() - 1, 0);
    }

    public int from(int edge) {
        return corners.get(edge);
    }

    public int to(int edge) {
        return corners.get((edge + 1) % corners.size());
    }

    /** Whether the corners make a line or ring that does not cross itself, going round anticlockwise when closed. */
    public boolean fits(Positions at) {
        if (corners.isEmpty()) {
            return true;
        }
        if (firstCrossing(at).isPresent()) {
            return false;
        }
        return !closed || Ring.signedAreaMm2(places(at)) > 0;
    }

    /** Two edges that cross, by their numbers. */
    public record Crossing(int one, int other) {}

    /** The first two edges that cross, if any. */
    public Optional<Crossing> firstCrossing(Positions at) {
        for (int i = 0; i < edges(); i++) {
            for (int j = i + 1; j < edges(); j++) {
                if (cross(at, i, j)) {
                    return Optional.of(new Crossing(i, j));
                }
            }
        }
        return Optional.empty();
    }

    public List<Point> places(Positions at) {
        List<Point> places = new ArrayList<>();
        for (int corner : corners) {
            places.add(at.at(corner));
        }
        return places;
    }

    /** Corners between two others at which the line bends the other way in another shape. */
    public List<Integer> otherBends(Positions one, Positions other) {
        List<Integer> bends = new ArrayList<>();
        for (int i = 1; i + 1 < corners.size(); i++) {
            Observation bend = new Observation.Turn(corners.get(i), corners.get(i - 1), corners.get(i + 1), 0, 1);
            double turned = bend.computed(one);
            if (turned * bend.computed(other) < 0 && Math.abs(StrictMath.sin(turned)) > STRAIGHT) {
                bends.add(corners.get(i));
            }
        }
        return bends;
    }

    /** A line and its mirror image have the same distances; they bend the other way. */
    public boolean sameBends(Positions one, Positions other) {
        return otherBends(one, other).isEmpty();
    }

    /** How many edges at this corner cross another edge, over the corners placed so far. */
    public int crossingsAt(int corner, Positions at, boolean[] placed) {
        int index = corners.indexOf(corner);
        if (index < 0) {
            return 0;
        }
        int crossings = 0;
        int n = corners.size();
        int before = closed ? Math.floorMod(index - 1, n) : index - 1;
        for (int edge : new int[] {before, index}) {
            if (edge < 0 || edge >= edges() || !isPlaced(edge, placed)) {
                continue;
            }
            for (int other = 0; other < edges(); other++) {
                if (other != edge && isPlaced(other, placed) && cross(at, edge, other)) {
                    crossings++;
                }
            }
        }
        return crossings;
    }

    private boolean isPlaced(int edge, boolean[] placed) {
        return placed[from(edge)] && placed[to(edge)];
    }

    private boolean cross(Positions at, int one, int other) {
        if (from(one) == from(other) || from(one) == to(other) || to(one) == from(other) || to(one) == to(other)) {
            return foldsBack(at, one, other);
        }
        Point a = at.at(from(one));
        Point b = at.at(to(one));
        Point c = at.at(from(other));
        Point d = at.at(to(other));
        double abc = b.minus(a).cross(c.minus(a));
        double abd = b.minus(a).cross(d.minus(a));
        double cda = d.minus(c).cross(a.minus(c));
        double cdb = d.minus(c).cross(b.minus(c));
        return abc * abd < 0 && cda * cdb < 0;
    }

    /** Two edges that share a corner cross only where one lies back along the other. */
    private boolean foldsBack(Positions at, int one, int other) {
        if (to(one) == from(other) && from(one) != to(other)) {
            return foldsBack(at.at(from(one)), at.at(to(one)), at.at(to(other)));
        }
        return to(other) == from(one) && from(other) != to(one) && foldsBack(at, other, one);
    }

    private static boolean foldsBack(Point before, Point corner, Point after) {
        Point in = before.minus(corner);
        Point out = after.minus(corner);
        return in.dot(out) > 0 && Math.abs(in.cross(out)) < FOLDED * in.dot(out);
    }
}
