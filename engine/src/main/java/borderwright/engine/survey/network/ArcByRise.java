package borderwright.engine.survey.network;

/**
 * A circular arc known by its chord and by its rise, the distance from the middle of the chord to the arc.
 *
 * @param chordMm length of the chord, mm, more than 0
 * @param riseMm rise, mm, more than 0 and at most half the chord (a half circle)
 */
public record ArcByRise(double chordMm, double riseMm) {
    public ArcByRise {
        if (!(chordMm > 0) || !(riseMm > 0) || riseMm > chordMm / 2) {
            throw new IllegalArgumentException(
                    "an arc has a rise of 0 to half its chord, got " + riseMm + " mm over " + chordMm + " mm");
        }
    }

    /** {@code (c^2/4 + s^2) / 2s}, from the right triangle of radius, half chord and radius less rise; mm. */
    public double radiusMm() {
        return (chordMm * chordMm / 4 + riseMm * riseMm) / (2 * riseMm);
    }

    /** Angle at the centre, radians. */
    public double angleRad() {
        return 4 * StrictMath.atan2(2 * riseMm, chordMm);
    }

    /** Length along the arc, mm. */
    public double lengthMm() {
        return radiusMm() * angleRad();
    }

    /** Area between arc and chord, mm2. */
    public double segmentMm2() {
        double radius = radiusMm();
        return radius * radius * (angleRad() - StrictMath.sin(angleRad())) / 2;
    }

    /** Standard deviation of the radius, mm, from those of chord and rise. */
    public double sdRadiusMm(double sdChordMm, double sdRiseMm) {
        double byChord = chordMm / (4 * riseMm);
        double byRise = 0.5 - chordMm * chordMm / (8 * riseMm * riseMm);
        return StrictMath.hypot(byChord * sdChordMm, byRise * sdRiseMm);
    }
}
