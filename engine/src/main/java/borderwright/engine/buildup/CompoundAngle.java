package borderwright.engine.buildup;

import borderwright.engine.measure.Angle;

/**
 * How a flat board is cut where it meets its neighbour at a corner and leans: the fence and the blade are both turned.
 *
 * <p>For walls that stand upright the fence stays square and the blade takes half the corner; the general form is here
 * for sloped sides and as a check of the upright one.
 *
 * <p><b>Method.</b> Two boards of equal lean meet in the plane that halves the corner. In a board's own face that plane
 * leaves a line (the mitre); against the face it stands at an angle (the bevel). With {@code h} half the angle that the
 * path turns at the corner, and {@code s} how far the face leans from the vertical: {@code tan M = tan h sin s}, {@code
 * sin B = sin h cos s}.
 *
 * @param mitre fence angle from square, in the board's face
 * @param bevel blade tilt from square
 */
public record CompoundAngle(Angle mitre, Angle bevel) {

    /**
     * A ring of {@code sides} equal boards.
     *
     * @param sides at least 3
     * @param pitchDeg tilt of each side from lying flat: 0 a picture frame, 90 an upright box
     */
    public static CompoundAngle ofRing(int sides, double pitchDeg) {
        if (sides < 3) {
            throw new IllegalArgumentException("a ring has at least 3 sides, got " + sides);
        }
        return ofHalfTurn(StrictMath.PI / sides, StrictMath.toRadians(pitchDeg));
    }

    /**
     * One corner between two boards of the same lean.
     *
     * @param cornerDeg angle inside the corner on the plan, above 0 and below 360
     * @param leanDeg how far the faces lean from the vertical, either way, below 90
     */
    public static CompoundAngle ofCorner(double cornerDeg, double leanDeg) {
        if (!(cornerDeg > 0 && cornerDeg < 360)) {
            throw new IllegalArgumentException("a corner lies between 0 and 360 degrees, got " + cornerDeg);
        }
        double halfTurn = StrictMath.toRadians(StrictMath.abs(180 - cornerDeg) / 2);
        return ofHalfTurn(halfTurn, StrictMath.toRadians(90 - StrictMath.abs(leanDeg)));
    }

    /**
     * Crown moulding cut lying flat.
     *
     * @param springDeg angle between its back and the wall
     * @param cornerDeg angle of the room's corner
     */
    public static CompoundAngle ofCrown(double springDeg, double cornerDeg) {
        double spring = StrictMath.toRadians(springDeg);
        double half = StrictMath.toRadians(cornerDeg / 2);
        return new CompoundAngle(
                new Angle(StrictMath.atan(StrictMath.sin(spring) / StrictMath.tan(half))),
                new Angle(StrictMath.asin(StrictMath.cos(spring) * StrictMath.cos(half))));
    }

    /** Angle inside the timber between the two faces that meet. */
    public Angle dihedral() {
        return new Angle(StrictMath.PI - 2 * bevel.radians());
    }

    private static CompoundAngle ofHalfTurn(double halfTurn, double pitch) {
        return new CompoundAngle(
                new Angle(StrictMath.atan(StrictMath.tan(halfTurn) * StrictMath.cos(pitch))),
                new Angle(StrictMath.asin(StrictMath.sin(halfTurn) * StrictMath.sin(pitch))));
    }
}
