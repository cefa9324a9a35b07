package borderwright.engine.geometry;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A polygon without holes, going round anticlockwise; side {@code i} runs from corner {@code i} to the next.
 *
 * <p>Whether it is simple is the maker's promise; {@link #toJts()} lets it be tested.
 *
 * @param corners at least three, the first not repeated at the end, in anticlockwise order
 */
public record Ring(List<Point> corners) {
    private static final GeometryFactory JTS = new GeometryFactory();

    public Ring {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("a ring needs at least 3 corners, got " + corners.size());
        }
        if (signedAreaMm2(corners) <= 0) {
            throw new IllegalArgumentException("a ring goes round anticlockwise and has an area");
        }
    }

    public static Ring rectangle(double x0Mm, double y0Mm, double x1Mm, double y1Mm) {
        return new Ring(
                List.of(new Point(x0Mm, y0Mm), new Point(x1Mm, y0Mm), new Point(x1Mm, y1Mm), new Point(x0Mm, y1Mm)));
    }

    /** Area with sign, mm2: positive when the corners go round anticlockwise. */
    public static double signedAreaMm2(List<Point> corners) {
        double twice = 0;
        Point origin = corners.get(0);
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i).minus(origin);
            Point b = corners.get((i + 1) % corners.size()).minus(origin);
            twice += a.cross(b);
        }
        return twice / 2;
    }

    public int size() {
        return corners.size();
    }

    /** Corner {@code i}, counted round and round: -1 is the last. */
    public Point corner(int i) {
        return corners.get(Math.floorMod(i, corners.size()));
    }

    public double sideMm(int i) {
        return corner(i).distanceMm(corner(i + 1));
    }

    /** Length all the way round, mm. */
    public double perimeterMm() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += sideMm(i);
        }
        return sum;
    }

    public double longestSideMm() {
        double longest = 0;
        for (int i = 0; i < size(); i++) {
            longest = Math.max(longest, sideMm(i));
        }
        return longest;
    }

    /** Direction of side {@code i}, length 1. */
    public Point direction(int i) {
        return corner(i + 1).minus(corner(i)).unit();
    }

    /** Angle inside the ring at corner {@code i}, radians, in (0, 2 pi). */
    public double insideAngle(int i) {
        Point in = corner(i - 1).minus(corner(i));
        Point out = corner(i + 1).minus(corner(i));
        double angle = StrictMath.atan2(out.cross(in), out.dot(in));
        return angle < 0 ? angle + 2 * StrictMath.PI : angle;
    }

    public double areaMm2() {
        return signedAreaMm2(corners);
    }

    /** Side {@code i} with its two ends. */
    public Segment side(int i) {
        return new Segment(corner(i), corner(i + 1));
    }

    /** Whether {@code point} lies inside, more than {@code marginMm} from every side (negative: no more than that outside). */
    public boolean contains(Point point, double marginMm) {
        double nearestMm = Double.POSITIVE_INFINITY;
        boolean inside = false;
        for (int i = 0; i < size(); i++) {
            Point a = corner(i);
            Point b = corner(i + 1);
            nearestMm = Math.min(nearestMm, side(i).distanceMm(point));
            boolean spans = a.yMm() > point.yMm() != b.yMm() > point.yMm();
            if (spans && b.minus(a).cross(point.minus(a)) > 0 == b.yMm() > a.yMm()) {
                inside = !inside;
            }
        }
        return inside ? nearestMm > marginMm : nearestMm <= -marginMm;
    }

    /** The same polygon for JTS: coordinates in mm. */
    public Polygon toJts() {
        Coordinate[] shell = new Coordinate[corners.size() + 1];
        for (int i = 0; i <= corners.size(); i++) {
            Point p = corner(i);
            shell[i] = new Coordinate(p.xMm(), p.yMm());
        }
        return JTS.createPolygon(shell);
    }

    /** Mean of the corners; not the centroid of the area. */
    public Point meanCorner() {
        Point sum = new Point(0, 0);
        for (Point p : corners) {
            sum = sum.plus(p);
        }
        return sum.times(1.0 / size());
    }
}
