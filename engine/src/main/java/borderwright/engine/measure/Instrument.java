package borderwright.engine.measure;

/**
 * What a measure was taken with, and how sure such a measure is when the person states nothing.
 *
 * <p>The default standard deviation is {@code fixed + perMetre x length}. Usual values (common practice, no source):
 * a 3 m tape is read to about 3 mm, a 10 m tape on rough ground to 5 to 10 mm, a gauge on a rough wall to 0.5 to 1
 * degree, a water level to 3 mm.
 */
public enum Instrument {
    TAPE(1.5, 0.5, 0),
    LONG_TAPE(3.0, 0.5, 0),
    LASER(1.5, 0.1, 0),
    GAUGE(0, 0, 0.5),
    BEVEL(0, 0, 1.0),
    WATER_LEVEL(3.0, 0, 0),
    STRING_LINE(3.0, 0.5, 0),
    LASER_LEVEL(2.0, 0.2, 0);

    /** A short tape reaches this far. */
    private static final double SHORT_TAPE_MM = 5000;

    private final double fixedMm;
    private final double perMetreMm;
    private final double angleDeg;

    Instrument(double fixedMm, double perMetreMm, double angleDeg) {
        this.fixedMm = fixedMm;
        this.perMetreMm = perMetreMm;
        this.angleDeg = angleDeg;
    }

    /** The tape that is usually taken to a length. */
    public static Instrument tapeFor(double lengthMm) {
        return Math.abs(lengthMm) <= SHORT_TAPE_MM ? TAPE : LONG_TAPE;
    }

    /** Default standard deviation of a length of {@code lengthMm} taken with this, in mm; 0 for angle instruments. */
    public double lengthSdMm(double lengthMm) {
        return fixedMm + perMetreMm * Math.abs(lengthMm) / 1000;
    }

    /** Default standard deviation of an angle, in degrees; 0 for length instruments. */
    public double angleSdDeg() {
        return angleDeg;
    }
}
