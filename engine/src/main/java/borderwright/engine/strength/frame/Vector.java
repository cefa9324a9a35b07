package borderwright.engine.strength.frame;

/**
 * A place or a direction in space.
 *
 * @param x first component
 * @param y second component
 * @param z third component, upwards in the planter
 */
public record Vector(double x, double y, double z) {
    public static final Vector ZERO = new Vector(0, 0, 0);
    public static final Vector X = new Vector(1, 0, 0);
    public static final Vector Y = new Vector(0, 1, 0);
    public static final Vector Z = new Vector(0, 0, 1);

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** Same direction, length 1; the null vector is refused. */
    public Vector unit() {
        double length = length();
        if (!(length > 0)) {
            throw new IllegalArgumentException("a null vector has no direction");
        }
        return times(1 / length);
    }

    double component(int axis) {
        return axis == 0 ? x : axis == 1 ? y : z;
    }
}
