package borderwright.engine.ground;

import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * A surface of plane triangles over an area of the plan.
 *
 * @param facets triangles that cover the area without overlap
 */
public record SurfaceMesh(List<Facet> facets) {
    private static final int MOST_HALVINGS = 6;

    public SurfaceMesh {
        facets = List.copyOf(facets);
    }

    /**
     * One triangle.
     *
     * @param a corner on the plan
     * @param b next corner
     * @param c last corner
     * @param aMm level of the surface at {@code a}, mm
     * @param bMm at {@code b}
     * @param cMm at {@code c}
     */
    public record Facet(Point a, Point b, Point c, double aMm, double bMm, double cMm) {
        public double areaMm2() {
            return Math.abs(b.minus(a).cross(c.minus(a))) / 2;
        }

        private double longestMm() {
            return Math.max(a.distanceMm(b), Math.max(b.distanceMm(c), c.distanceMm(a)));
        }
    }

    /**
     * The surface over an area.
     *
     * @param area polygons with or without holes, mm
     * @param levelMm level of the surface at a place, mm
     * @param longestMm longest side of a triangle wanted, mm; triangles that would need more than six halvings stay longer
     */
    public static SurfaceMesh over(Geometry area, ToDoubleFunction<Point> levelMm, double longestMm) {
        List<Facet> facets = new ArrayList<>();
        Geometry triangles = new ConstrainedDelaunayTriangulator(area).getResult();
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            Coordinate[] c = triangles.getGeometryN(i).getCoordinates();
            Point first = point(c[0]);
            Point second = point(c[1]);
            Point third = point(c[2]);
            Facet whole = new Facet(
                    first,
                    second,
                    third,
                    levelMm.applyAsDouble(first),
                    levelMm.applyAsDouble(second),
                    levelMm.applyAsDouble(third));
            split(whole, halvings(whole.longestMm(), longestMm), levelMm, facets);
        }
        return new SurfaceMesh(facets);
    }

    public double areaMm2() {
        return facets.stream().mapToDouble(Facet::areaMm2).sum();
    }

    /** What lies above and below a level, the surface taken as it is, or lowered by a layer stripped from it. */
    public CutAndFill against(double levelMm, double strippedMm) {
        double from = levelMm + strippedMm;
        CutAndFill sum = CutAndFill.NONE;
        for (Facet f : facets) {
            sum = sum.plus(CutAndFill.under(f.areaMm2(), f.aMm() - from, f.bMm() - from, f.cMm() - from));
        }
        return sum;
    }

    private static int halvings(double sideMm, double longestMm) {
        int n = 0;
        while (n < MOST_HALVINGS && sideMm / (1 << n) > longestMm) {
            n++;
        }
        return n;
    }

    /** Each halving makes four triangles of one, all of the same shape. */
    private static void split(Facet f, int halvings, ToDoubleFunction<Point> levelMm, List<Facet> into) {
        if (halvings == 0) {
            into.add(f);
            return;
        }
        Point ab = f.a().towards(f.b(), 0.5);
        Point bc = f.b().towards(f.c(), 0.5);
        Point ca = f.c().towards(f.a(), 0.5);
        double zab = levelMm.applyAsDouble(ab);
        double zbc = levelMm.applyAsDouble(bc);
        double zca = levelMm.applyAsDouble(ca);
        split(new Facet(f.a(), ab, ca, f.aMm(), zab, zca), halvings - 1, levelMm, into);
        split(new Facet(ab, f.b(), bc, zab, f.bMm(), zbc), halvings - 1, levelMm, into);
        split(new Facet(ca, bc, f.c(), zca, zbc, f.cMm()), halvings - 1, levelMm, into);
        split(new Facet(ab, bc, ca, zab, zbc, zca), halvings - 1, levelMm, into);
    }

    private static Point point(Coordinate c) {
        return new Point(c.getX(), c.getY());
    }
}
