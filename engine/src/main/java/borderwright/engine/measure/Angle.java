package borderwright.engine.measure;

/**
 * A plane angle.
 *
 * @param radians the angle in radians
 */
public record Angle(double radians) {
    public static Angle ofDegrees(double degrees) {
        return new Angle(StrictMath.toRadians(degrees));
    }

    public double degrees() {
        return StrictMath.toDegrees(radians);
    }

    @Override
    public String toString() {
        return degrees() + " deg";
    }
}
