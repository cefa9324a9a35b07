package borderwright.engine.survey;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The order in which the corners go round, which tells a shape from its mirror image.
 *
 * @param corners point numbers; anticlockwise when closed; empty when nothing is known of an order
 * @param closed whether the last corner joins the first
 */
record GoingRound(List<Integer> corners, boolean closed) {
    static final GoingRound UNKNOWN = new GoingRound(List.of(), false);

    GoingRound {
        corners = List.copyOf(corners);
    }

    int edges() {
        return closed ? corners.size() : Math.max(corners.size() - 1, 0);
    }

    int from(int edge) {
        return corners.get(edge);
    }

    int to(int edge) {
        return corners.get((edge + 1) % corners.size());
    }

    /** Whether the corners make a line or ring that does not cross itself, going round anticlockwise when closed. */
    boolean fits(Positions at) {
        if (corners.isEmpty()) {
            return true;
        }
        for (int i = 0; i < edges(); i++) {
            for (int j = i + 1; j < edges(); j++) {
                if (cross(at, i, j)) {
                    return false;
                }
            }
        }
        return !closed || Ring.signedAreaMm2(places(at)) > 0;
    }

    /** The first two edges that cross, if any, as edge numbers. */
    List<Integer> firstCrossing(Positions at) {
        for (int i = 0; i < edges(); i++) {
            for (int j = i + 1; j < edges(); j++) {
                if (cross(at, i, j)) {
                    return List.of(i, j);
                }
            }
        }
        return List.of();
    }

    List<Point> places(Positions at) {
        List<Point> places = new ArrayList<>();
        for (int corner : corners) {
            places.add(at.at(corner));
        }
        return places;
    }

    /** How many edges at this corner cross another edge, over the corners placed so far. */
    int crossingsAt(int corner, Positions at, boolean[] placed) {
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
        if (to(one) != from(other) || edges() < 2) {
            return false;
        }
        Point in = at.at(from(one)).minus(at.at(to(one)));
        Point out = at.at(to(other)).minus(at.at(from(other)));
        double turn = Math.abs(StrictMath.atan2(in.cross(out), in.dot(out)));
        return from(one) != to(other) && turn < 1e-9;
    }
}
