package borderwright.engine.geometry;

import java.util.Optional;

/**
 * A straight line without ends, with a direction: points to its left have a positive offset.
 *
 * @param through a point on it, mm
 * @param direction its direction, length 1
 */
public record Line(Point through, Point direction) {
    /** Sine of the angle below which two lines count as parallel. */
    private static final double PARALLEL = 1e-9;

    public Line {
        if (Math.abs(direction.lengthMm() - 1) > 1e-9) {
            throw new IllegalArgumentException("a line's direction has length 1, got " + direction.lengthMm());
        }
    }

    /** The line from one point towards another. Equal points fix no line and are refused. */
    public static Line between(Point from, Point to) {
        return new Line(from, to.minus(from).unit());
    }

    /** The parallel line a distance to the left; negative to the right. */
    public Line offset(double leftMm) {
        return new Line(through.plus(direction.left().times(leftMm)), direction);
    }

    /** The same line run through the other way: its left becomes its right. */
    public Line reversed() {
        return new Line(through, direction.times(-1));
    }

    /** The line at right angles through a point of this line, turned to the left. */
    public Line squareAt(double stationMm) {
        return new Line(at(stationMm), direction.left());
    }

    /** The point so far along from {@link #through()}. */
    public Point at(double stationMm) {
        return through.plus(direction.times(stationMm));
    }

    /** How far along from {@link #through()} the foot of the perpendicular from {@code point} lies, mm. */
    public double stationMm(Point point) {
        return point.minus(through).dot(direction);
    }

    /** Distance of {@code point} from this line, mm: positive to the left. */
    public double offsetMm(Point point) {
        return direction.cross(point.minus(through));
    }

    /** Where two lines cross; empty when they are parallel to within a thousand-millionth of a radian. */
    public Optional<Point> meet(Line other) {
        double sine = direction.cross(other.direction);
        if (Math.abs(sine) < PARALLEL) {
            return Optional.empty();
        }
        return Optional.of(at(other.through.minus(through).cross(other.direction) / sine));
    }

    /** Angle by which {@code other} turns to the left of this line, radians, in (-pi, pi]. */
    public double turnTo(Line other) {
        return StrictMath.atan2(direction.cross(other.direction), direction.dot(other.direction));
    }
}
