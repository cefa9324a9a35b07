package borderwright.engine.buildup.parts;

import borderwright.engine.message.Message;

/**
 * How one end of a piece is cut.
 *
 * @param tiltDeg blade tilt from square, in the thickness-length plane, degrees, 0 to below 90
 * @param fenceDeg fence angle from square, in the width-length plane, degrees, 0 to below 90
 * @param longPoint where the longest point of this end lies
 * @param offsetMm how far the short point stands back from the long point along the length, mm
 * @param words the whole cut, from square, with the face and hand of its long point
 * @param how how it is made with the saws at hand, or how else where none reaches the angle
 * @param inRange whether a saw at hand makes it as it stands
 */
public record EndCut(
        double tiltDeg,
        double fenceDeg,
        LongPoint longPoint,
        double offsetMm,
        Message words,
        Message how,
        boolean inRange) {

    public boolean isSquare() {
        return longPoint == LongPoint.NONE;
    }

    /** Where the long point of a cut lies, the marked face towards the reader. */
    public enum LongPoint {
        /** A square end has none. */
        NONE,
        /** On the marked face (out, or up). */
        MARKED_FACE,
        /** On the hidden face (in, or down). */
        HIDDEN_FACE,
        /** On the upper edge as the piece lies for reading. */
        UPPER_EDGE,
        /** On the lower edge as the piece lies for reading. */
        LOWER_EDGE
    }
}
