package borderwright.engine.buildup.draft;

/**
 * How one board ends at a corner of its ring, and where that leaves its edges.
 *
 * <p>The board is a band beside the outline between the offsets {@code nearMm} (outside) and {@code farMm} (inside). At
 * a corner of inside angle C its end is one straight line: through the corner and halving it (mitred), or along one of
 * the two faces of the neighbour (lapped). Where C is below 180 degrees the butting end lies on the neighbour's inner
 * face and the through end runs out to its outer face; above 180 it is the other way round.
 *
 * <p>So the outer face of a board is as long as its side of the outline less the setbacks of its two ends. Those of a mitre
 * are 0 on the outer face: a mitred side board is as long as the side, from long point to long point. {@code
 * WallBoards#strip} takes them off.
 */
public enum LapOrMitre {
    MITRED,
    THROUGH,
    BUTTING;

    /**
     * How far behind the corner, along its side, the end lies at the offset {@code w}.
     *
     * @param cut how the board ends
     * @param angle C, radians
     * @param w offset inwards from the outline, mm
     * @param nearMm offset of the ring's outer face
     * @param farMm offset of the ring's inner face
     * @return mm; negative beyond the corner
     */
    public static double setbackMm(LapOrMitre cut, double angle, double w, double nearMm, double farMm) {
        if (cut == MITRED) {
            return w * cot(angle / 2);
        }
        boolean salient = angle < StrictMath.PI;
        double neighbourMm = (cut == BUTTING) == salient ? farMm : nearMm;
        return w * cot(angle) + neighbourMm / StrictMath.sin(angle);
    }

    /** Tilt from square of a mitred corner, degrees: |90 - C/2|. */
    public static double mitredTiltDeg(double angle) {
        return StrictMath.abs(90 - StrictMath.toDegrees(angle) / 2);
    }

    /** Tilt from square of a lapped corner, degrees: |90 - C| below 180, |270 - C| above. */
    public static double lappedTiltDeg(double angle) {
        double degrees = StrictMath.toDegrees(angle);
        return StrictMath.abs((degrees < 180 ? 90 : 270) - degrees);
    }

    private static double cot(double angle) {
        return StrictMath.cos(angle) / StrictMath.sin(angle);
    }
}
