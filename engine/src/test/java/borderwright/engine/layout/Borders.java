package borderwright.engine.layout;

import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;

/** Borders to lay planters out in. */
public final class Borders {
    private Borders() {}

    public static Outline of(Ring ring, List<OutlineEdge> edges, GroundHeights ground) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            names.add(String.valueOf((char) ('A' + i)));
        }
        return new Outline(ring, names, edges, ground);
    }

    public static OutlineEdge edge(EdgeKind kind) {
        return new OutlineEdge(kind, SurveyResolver.gap(kind).mm(), 0, 0);
    }

    public static OutlineEdge edge(EdgeKind kind, double gapMm, double riseMm) {
        return new OutlineEdge(kind, gapMm, 0, riseMm);
    }

    /** A border A B C D, A-B along a fence at the bottom, walls at its ends B-C and D-A, lawn C-D in front. */
    public static Outline strip(double lengthMm, double depthMm) {
        return of(
                Ring.rectangle(0, 0, lengthMm, depthMm),
                List.of(edge(EdgeKind.FENCE), edge(EdgeKind.WALL), edge(EdgeKind.LAWN), edge(EdgeKind.WALL)),
                GroundHeights.LEVEL);
    }

    /**
     * Two walls of 5 m, A-B and B-C, that meet at B with an angle inside the border; lawn all round the rest, far away.
     */
    public static Outline corner(double degrees, EdgeKind walls) {
        double angle = StrictMath.toRadians(degrees);
        Point b = new Point(0, 0);
        Point a = new Point(-5000, 0);
        Point c = new Point(-5000 * StrictMath.cos(angle), 5000 * StrictMath.sin(angle));
        List<Point> corners = new ArrayList<>(List.of(a, b, c));
        List<OutlineEdge> edges = new ArrayList<>(List.of(edge(walls), edge(walls)));
        // Round a wide circle anticlockwise from the bearing of C to the bearing of A, which is 180 degrees.
        double from = 180 - degrees;
        for (double bearing = from + 20; bearing < 180 - 10; bearing += 20) {
            corners.add(new Point(
                    9000 * StrictMath.cos(StrictMath.toRadians(bearing)),
                    9000 * StrictMath.sin(StrictMath.toRadians(bearing))));
        }
        while (edges.size() < corners.size()) {
            edges.add(edge(EdgeKind.LAWN));
        }
        return of(new Ring(corners), edges, GroundHeights.LEVEL);
    }
}
