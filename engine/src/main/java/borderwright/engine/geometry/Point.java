package borderwright.engine.geometry;

/**
 * A place, or a displacement, on the plan.
 *
 * @param xMm to the right, mm
 * @param yMm away from the reader, mm
 */
public record Point(double xMm, double yMm) {
    public Point plus(Point other) {
        return new Point(xMm + other.xMm, yMm + other.yMm);
    }

    public Point minus(Point other) {
        return new Point(xMm - other.xMm, yMm - other.yMm);
    }

    public Point times(double factor) {
        return new Point(xMm * factor, yMm * factor);
    }

    /** Scalar product, mm2. */
    public double dot(Point other) {
        return xMm * other.xMm + yMm * other.yMm;
    }

    /** z of the vector product, mm2: positive when {@code other} lies to the left of this direction. */
    public double cross(Point other) {
        return xMm * other.yMm - yMm * other.xMm;
    }

    public double lengthMm() {
        return StrictMath.hypot(xMm, yMm);
    }

    public double distanceMm(Point other) {
        return minus(other).lengthMm();
    }

    /** Same direction, length 1. The null vector has no direction and is refused. */
    public Point unit() {
        double length = lengthMm();
        if (length == 0) {
            throw new IllegalArgumentException("a null vector has no direction");
        }
        return times(1 / length);
    }

    /** Turned a quarter to the left. */
    public Point left() {
        return new Point(-yMm, xMm);
    }

    /** The point a fraction of the way from this one to {@code other}. */
    public Point towards(Point other, double fraction) {
        return plus(other.minus(this).times(fraction));
    }
}
