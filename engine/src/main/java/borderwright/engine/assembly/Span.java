package borderwright.engine.assembly;

/**
 * From one distance to another along a line.
 *
 * @param fromMm where it starts, mm
 * @param toMm where it ends, no less than {@code fromMm}, mm
 */
public record Span(double fromMm, double toMm) {
    public double middleMm() {
        return (fromMm + toMm) / 2;
    }

    public double lengthMm() {
        return toMm - fromMm;
    }

    /** Whether a distance lies in it, or no more than that outside. */
    boolean holds(double mm, double marginMm) {
        return mm >= fromMm - marginMm && mm <= toMm + marginMm;
    }

    /** What it shares with another; its own middle where they share nothing. */
    Span within(Span other) {
        double from = StrictMath.max(fromMm, other.fromMm);
        double to = StrictMath.min(toMm, other.toMm);
        return from < to ? new Span(from, to) : new Span(middleMm(), middleMm());
    }

    /** The same from where it starts, ended so much sooner, mm. */
    Span shorterBy(double mm) {
        return new Span(fromMm, toMm - mm);
    }

    /** The least span that holds both. */
    public Span with(Span other) {
        return new Span(StrictMath.min(fromMm, other.fromMm), StrictMath.max(toMm, other.toMm));
    }
}
