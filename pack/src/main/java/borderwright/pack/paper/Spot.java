package borderwright.pack.paper;

/**
 * A place, or a shift, on paper.
 *
 * @param x from the left edge, mm
 * @param y down from the top edge, mm
 */
public record Spot(double x, double y) {
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    public Spot plus(Spot other) {
        return new Spot(x + other.x, y + other.y);
    }

    public Spot minus(Spot other) {
        return new Spot(x - other.x, y - other.y);
    }

    public Spot times(double factor) {
        return new Spot(x * factor, y * factor);
    }

    public double dot(Spot other) {
        return x * other.x + y * other.y;
    }

    public double length() {
        return StrictMath.hypot(x, y);
    }

    public double distance(Spot other) {
        return minus(other).length();
    }

    /** Same direction, 1 mm long; the null shift is refused. */
    public Spot unit() {
        double length = length();
        if (length == 0) {
            throw new IllegalArgumentException("a null shift has no direction");
        }
        return times(1 / length);
    }

    /** Turned a quarter anticlockwise as seen on the paper. */
    public Spot left() {
        return new Spot(y, -x);
    }

    public Spot towards(Spot other, double fraction) {
        return plus(other.minus(this).times(fraction));
    }
}
