package borderwright.engine.survey;

import borderwright.engine.geometry.Arc;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.survey.fieldbook.EdgeRing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The border as it lies: the resolved form of the survey, and all that later stages know of it.
 *
 * @param ring the border's corners, anticlockwise, mm; curved edges are straight chords here
 * @param cornerNames name of each corner of {@code ring}; corners made by the program (the front of a strip) are named
 *     after the corner behind them with a prime, such as {@code B'}
 * @param edges edge {@code i} runs from corner {@code i} to the next
 * @param ground heights of the ground
 */
public record Outline(Ring ring, List<String> cornerNames, List<OutlineEdge> edges, GroundHeights ground) {
    private static final int ARC_PARTS = 24;

    public Outline {
        cornerNames = List.copyOf(cornerNames);
        edges = List.copyOf(edges);
        if (cornerNames.size() != ring.size() || edges.size() != ring.size()) {
            throw new IllegalArgumentException("one name and one edge for each of " + ring.size() + " corners, got "
                    + cornerNames.size() + " and " + edges.size());
        }
    }

    /** Whether a corner was made by the program: nothing marks it on the ground. */
    public boolean isMade(String name) {
        return EdgeRing.isFront(name, cornerNames);
    }

    /** The two corners of edge {@code i}, in the order of their names, such as {@code A B}. */
    public String edgeName(int i) {
        String a = cornerNames.get(i);
        String b = cornerNames.get((i + 1) % cornerNames.size());
        return a.compareTo(b) <= 0 ? a + " " + b : b + " " + a;
    }

    /** Edge {@code i} as the ends of a line, anticlockwise, such as {@code A-B}. */
    public String edgeAlong(int i) {
        return cornerNames.get(i) + "-" + cornerNames.get((i + 1) % cornerNames.size());
    }

    /** Places along edge {@code i}: its two corners, or places on the arc that its rise makes over the chord. */
    public List<Point> placesAlong(int i) {
        Point a = ring.corner(i);
        Point b = ring.corner(i + 1);
        double rise = edges.get(i).riseMm();
        if (rise == 0) {
            return List.of(a, b);
        }
        Arc arc = new Arc(a, b, rise);
        List<Point> places = new ArrayList<>();
        for (int k = 0; k <= ARC_PARTS; k++) {
            places.add(arc.at(k / (double) ARC_PARTS));
        }
        return places;
    }

    /** The straight line between two corners by their names; empty where one is none of the outline's, or both are the same. */
    public Optional<Segment> between(String first, String last) {
        int a = cornerNames.indexOf(first);
        int b = cornerNames.indexOf(last);
        return a < 0 || b < 0 || a == b ? Optional.empty() : Optional.of(new Segment(ring.corner(a), ring.corner(b)));
    }
}
