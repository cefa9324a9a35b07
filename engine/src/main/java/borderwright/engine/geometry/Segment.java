package borderwright.engine.geometry;

/**
 * A straight line between two ends.
 *
 * @param from its start, mm
 * @param to its end, mm; not the same place
 */
public record Segment(Point from, Point to) {
    public Segment {
        if (from.equals(to)) {
            throw new IllegalArgumentException("a segment has two ends, got " + from + " twice");
        }
    }

    public double lengthMm() {
        return from.distanceMm(to);
    }

    /** The line that it lies on, through {@link #from()} towards {@link #to()}. */
    public Line line() {
        return Line.between(from, to);
    }

    public Point middle() {
        return from.towards(to, 0.5);
    }

    /** The place on it nearest to {@code point}. */
    public Point nearestTo(Point point) {
        Point along = to.minus(from);
        double fraction = point.minus(from).dot(along) / along.dot(along);
        return from.towards(to, Math.max(0, Math.min(1, fraction)));
    }

    public double distanceMm(Point point) {
        return nearestTo(point).distanceMm(point);
    }

    /** Least distance between two segments, mm; 0 where they cross or touch. */
    public double distanceMm(Segment other) {
        if (crosses(other)) {
            return 0;
        }
        return Math.min(
                Math.min(distanceMm(other.from), distanceMm(other.to)),
                Math.min(other.distanceMm(from), other.distanceMm(to)));
    }

    private boolean crosses(Segment other) {
        Point a = to.minus(from);
        Point b = other.to.minus(other.from);
        return a.cross(other.from.minus(from)) * a.cross(other.to.minus(from)) < 0
                && b.cross(from.minus(other.from)) * b.cross(to.minus(other.from)) < 0;
    }
}
