package borderwright.engine.geometry;

/**
 * An arc of a circle between two ends, given by its chord and its rise.
 *
 * <p>Radius from chord c and rise s: R = (c^2/4 + s^2) / 2s (the circle through three points; exact).
 *
 * @param from its start, mm
 * @param to its end, mm
 * @param riseMm how far its middle stands off the chord, mm: positive to the <em>right</em> of the direction from start
 *     to end, which is outward for a side of a ring; not 0
 */
public record Arc(Point from, Point to, double riseMm) {
    public Arc {
        if (from.equals(to) || riseMm == 0) {
            throw new IllegalArgumentException(
                    "an arc has a chord and a rise, got " + from.distanceMm(to) + " mm and " + riseMm + " mm");
        }
    }

    public double chordMm() {
        return from.distanceMm(to);
    }

    public double radiusMm() {
        double half = chordMm() / 2;
        return (half * half + riseMm * riseMm) / (2 * Math.abs(riseMm));
    }

    public Point centre() {
        Point right = to.minus(from).unit().left().times(-1);
        double alongRight = riseMm - StrictMath.copySign(radiusMm(), riseMm);
        return from.towards(to, 0.5).plus(right.times(alongRight));
    }

    /** Angle at the centre from start to end, radians: positive when the arc goes round anticlockwise. */
    public double sweep() {
        return StrictMath.copySign(4 * StrictMath.atan(2 * Math.abs(riseMm) / chordMm()), riseMm);
    }

    public double lengthMm() {
        return radiusMm() * Math.abs(sweep());
    }

    /** Bearing of the start from the centre, radians anticlockwise from x. */
    public double startBearing() {
        Point out = from.minus(centre());
        return StrictMath.atan2(out.yMm(), out.xMm());
    }

    /** The point at a fraction of the way along; outside 0 to 1 it lies on the rest of the circle. */
    public Point at(double fraction) {
        return polar(radiusMm(), startBearing() + fraction * sweep());
    }

    /** The point at a distance and a bearing from the centre. */
    public Point polar(double radiusMm, double bearing) {
        return centre().plus(new Point(radiusMm * StrictMath.cos(bearing), radiusMm * StrictMath.sin(bearing)));
    }

    /** Least distance from {@code point} to the arc, mm. */
    public double distanceMm(Point point) {
        return covers(point)
                ? Math.abs(point.distanceMm(centre()) - radiusMm())
                : Math.min(point.distanceMm(from), point.distanceMm(to));
    }

    /** Whether {@code point} lies within the arc's sector, seen from its centre. */
    private boolean covers(Point point) {
        Point out = point.minus(centre());
        double turn = StrictMath.atan2(out.yMm(), out.xMm()) - startBearing();
        double along = riseMm > 0 ? turn : -turn;
        double full = 2 * StrictMath.PI;
        return along - full * Math.floor(along / full) <= Math.abs(sweep());
    }

    /** How far a chord over {@code angle} radians at the centre stands off a circle, mm: R (1 - cos(angle / 2)). */
    public static double sagMm(double radiusMm, double angle) {
        return radiusMm * (1 - StrictMath.cos(angle / 2));
    }
}
