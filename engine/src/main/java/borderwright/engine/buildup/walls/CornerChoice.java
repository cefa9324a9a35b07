package borderwright.engine.buildup.walls;

import borderwright.engine.buildup.draft.LapOrMitre;
import borderwright.engine.garden.vocabulary.CornerStyle;

/**
 * Lapped or mitred: as requested where the saws reach it, else the other, else the lesser tilt.
 *
 * @param style how the corner is built
 * @param tiltDeg tilt of its cuts from square, degrees
 * @param inRange whether a saw at hand tilts that far
 */
record CornerChoice(CornerStyle style, double tiltDeg, boolean inRange) {
    /**
     * A difference too small for a saw's tilt scale (common practice, no source): a mitre at 45 on a 40 mm board for a
     * corner of 89.8 degrees gapes by 0.1 mm.
     */
    private static final double SCALE_DEG = 0.1;

    /**
     * Chooses for one corner.
     *
     * @param angle inside the box at the corner, radians
     * @param requested lapped or mitred, of the garden
     * @param greatestTiltDeg greatest tilt of the saws at hand, degrees
     */
    static CornerChoice of(double angle, CornerStyle requested, double greatestTiltDeg) {
        double mitred = LapOrMitre.mitredTiltDeg(angle);
        double lapped = LapOrMitre.lappedTiltDeg(angle);
        boolean mitreFits = mitred <= greatestTiltDeg + SCALE_DEG;
        boolean lapFits = lapped <= greatestTiltDeg + SCALE_DEG;
        CornerStyle style;
        if (mitreFits && lapFits) {
            style = requested;
        } else if (mitreFits || lapFits) {
            style = mitreFits ? CornerStyle.MITRED : CornerStyle.LAPPED;
        } else {
            style = mitred < lapped ? CornerStyle.MITRED : CornerStyle.LAPPED;
        }
        return new CornerChoice(style, style == CornerStyle.MITRED ? mitred : lapped, mitreFits || lapFits);
    }
}
