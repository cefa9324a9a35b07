package borderwright.engine.survey;

import borderwright.engine.geometry.Point;
import java.util.List;

/**
 * The plane that fits some levels best by least squares of height.
 *
 * <p>Only directions in which the levels lie apart tell a slope: where they all lie along a line, or in one place, the plane is
 * level the other way. Solved along the principal axes of their places, so that neither case needs one of its own.
 *
 * @param middle mean of the levels' places
 * @param heightMm its height there, mm
 * @param slope its gradient, mm rise to a mm
 */
record BestPlane(Point middle, double heightMm, Point slope) {
    /**
     * Levels that scatter less than this across a direction are one line there, mm (standard deviation): an error of 3 mm in one
     * of them would tilt the ground by three in a hundred.
     */
    private static final double LEAST_SCATTER_MM = 100;

    static BestPlane through(List<GroundHeights.Spot> spots) {
        int n = spots.size();
        double x = 0;
        double y = 0;
        double z = 0;
        for (GroundHeights.Spot spot : spots) {
            x += spot.at().xMm() / n;
            y += spot.at().yMm() / n;
            z += spot.heightMm() / n;
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xz = 0;
        double yz = 0;
        for (GroundHeights.Spot spot : spots) {
            double dx = spot.at().xMm() - x;
            double dy = spot.at().yMm() - y;
            double dz = spot.heightMm() - z;
            xx += dx * dx / n;
            xy += dx * dy / n;
            yy += dy * dy / n;
            xz += dx * dz / n;
            yz += dy * dz / n;
        }
        double half = StrictMath.atan2(2 * xy, xx - yy) / 2;
        Point along = new Point(StrictMath.cos(half), StrictMath.sin(half));
        Point with = new Point(xz, yz);
        double mean = (xx + yy) / 2;
        double off = StrictMath.hypot((xx - yy) / 2, xy);
        Point slope = part(along, with, mean + off).plus(part(along.left(), with, mean - off));
        return new BestPlane(new Point(x, y), z, slope);
    }

    /** The slope along a principal axis, of the variance of the places along it. */
    private static Point part(Point axis, Point with, double variance) {
        return variance < LEAST_SCATTER_MM * LEAST_SCATTER_MM ? new Point(0, 0) : axis.times(with.dot(axis) / variance);
    }

    double heightMm(Point at) {
        return heightMm + at.minus(middle).dot(slope);
    }
}
