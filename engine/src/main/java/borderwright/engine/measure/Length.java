package borderwright.engine.measure;

/**
 * A length in whole ticks; 320 ticks are one millimetre.
 *
 * @param ticks the length in ticks of 1/320 mm; may be negative (a level below its datum)
 */
public record Length(long ticks) implements Comparable<Length> {
    /** Ticks in one millimetre: the least number that makes both 0.1 mm and 1/64 in whole. */
    public static final long TICKS_PER_MM = 320;

    /** Ticks in one inch (25.4 mm exactly). */
    public static final long TICKS_PER_INCH = 8128;

    public static final Length ZERO = new Length(0);

    /** The tick nearest to a length in millimetres; halves away from zero. */
    public static Length ofMm(double mm) {
        double ticks = mm * TICKS_PER_MM;
        if (!(Math.abs(ticks) < 9.0e15)) {
            throw new IllegalArgumentException("length out of range: " + mm + " mm");
        }
        return new Length((long) (ticks < 0 ? Math.ceil(ticks - 0.5) : Math.floor(ticks + 0.5)));
    }

    public double mm() {
        return ticks / (double) TICKS_PER_MM;
    }

    public double inches() {
        return ticks / (double) TICKS_PER_INCH;
    }

    public Length plus(Length other) {
        return new Length(Math.addExact(ticks, other.ticks));
    }

    public Length minus(Length other) {
        return new Length(Math.subtractExact(ticks, other.ticks));
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(ticks, other.ticks);
    }

    @Override
    public String toString() {
        return mm() + " mm";
    }
}
