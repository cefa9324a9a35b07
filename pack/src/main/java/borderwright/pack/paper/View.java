package borderwright.pack.paper;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.Collection;
import java.util.List;

/**
 * From places in the garden to places on paper: turned, scaled, and shifted.
 *
 * @param scale how much smaller
 * @param turnRad turned anticlockwise by, radians
 * @param origin place in the garden, mm
 * @param onPaper where that place comes on paper
 */
public record View(Scale scale, double turnRad, Point origin, Spot onPaper) {

    /** Smallest and greatest coordinates of some places after turning, mm. */
    public record Extent(double x0, double y0, double x1, double y1) {
        public double width() {
            return x1 - x0;
        }

        public double height() {
            return y1 - y0;
        }
    }

    /** How far some places reach once they are turned. */
    public static Extent extent(Collection<Point> places, double turnRad) {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (Point place : places) {
            Point p = turned(place, turnRad);
            x0 = StrictMath.min(x0, p.xMm());
            x1 = StrictMath.max(x1, p.xMm());
            y0 = StrictMath.min(y0, p.yMm());
            y1 = StrictMath.max(y1, p.yMm());
        }
        return new Extent(x0, y0, x1, y1);
    }

    /** A view whose extent has its upper left corner at a spot. */
    public static View of(Scale scale, double turnRad, Extent extent, Spot upperLeft) {
        Point corner = turned(new Point(extent.x0, extent.y1), -turnRad);
        return new View(scale, turnRad, corner, upperLeft);
    }

    private static Point turned(Point p, double turnRad) {
        double c = StrictMath.cos(turnRad);
        double s = StrictMath.sin(turnRad);
        return new Point(p.xMm() * c - p.yMm() * s, p.xMm() * s + p.yMm() * c);
    }

    public Spot at(Point place) {
        Point p = turned(place.minus(origin), turnRad);
        return onPaper.plus(scale.paper(p.xMm()), -scale.paper(p.yMm()));
    }

    /** A direction on paper, 1 mm long. */
    public Spot direction(Point direction) {
        Point p = turned(direction.unit(), turnRad);
        return new Spot(p.xMm(), -p.yMm());
    }

    public List<Spot> at(Ring ring) {
        return ring.corners().stream().map(this::at).toList();
    }
}
