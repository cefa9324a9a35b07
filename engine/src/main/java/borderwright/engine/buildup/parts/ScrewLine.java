package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Point;

/**
 * Where a screw goes: the middle of its head on the face that it enters, and which way it runs.
 *
 * @param xMm of its head on the plan, mm
 * @param yMm of its head on the plan, mm
 * @param zMm height of its head above the datum, mm
 * @param alongX component to the right of the unit vector from head to point
 * @param alongY component away
 * @param alongZ component upwards
 * @param lengthMm from head to point, mm; 0 for what is no screw, such as a strap
 */
public record ScrewLine(
        double xMm, double yMm, double zMm, double alongX, double alongY, double alongZ, double lengthMm) {
    private static final double PARALLEL = 1e-12;

    /** Level, from a place on the plan. */
    public static ScrewLine level(Point head, double zMm, Point along, double lengthMm) {
        return new ScrewLine(head.xMm(), head.yMm(), zMm, along.xMm(), along.yMm(), 0, lengthMm);
    }

    /** Straight down. */
    public static ScrewLine down(Point head, double zMm, double lengthMm) {
        return new ScrewLine(head.xMm(), head.yMm(), zMm, 0, 0, -1, lengthMm);
    }

    public Point head() {
        return new Point(xMm, yMm);
    }

    /** The place on the plan that lies so far behind the head. */
    public Point planAt(double depthMm) {
        return new Point(xMm + depthMm * alongX, yMm + depthMm * alongY);
    }

    /** The height that it has so far behind the head. */
    public double zAt(double depthMm) {
        return zMm + depthMm * alongZ;
    }

    /** Least distance between the axes of two screws, from head to point of each, mm. */
    public double nearestMm(ScrewLine o) {
        double rx = xMm - o.xMm;
        double ry = yMm - o.yMm;
        double rz = zMm - o.zMm;
        double b = alongX * o.alongX + alongY * o.alongY + alongZ * o.alongZ;
        double c = alongX * rx + alongY * ry + alongZ * rz;
        double f = o.alongX * rx + o.alongY * ry + o.alongZ * rz;
        double d = 1 - b * b;
        double t = d < PARALLEL ? 0 : within((b * f - c) / d, lengthMm);
        double u = b * t + f;
        if (u < 0 || u > o.lengthMm) {
            u = within(u, o.lengthMm);
            t = within(b * u - c, lengthMm);
        }
        double x = rx + t * alongX - u * o.alongX;
        double y = ry + t * alongY - u * o.alongY;
        double z = rz + t * alongZ - u * o.alongZ;
        return StrictMath.sqrt(x * x + y * y + z * z);
    }

    private static double within(double value, double most) {
        return StrictMath.max(0, StrictMath.min(most, value));
    }
}
