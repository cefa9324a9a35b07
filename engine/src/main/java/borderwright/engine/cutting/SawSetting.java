package borderwright.engine.cutting;

/**
 * How a saw is set and the board lies, for a person who stands at the saw. See docs/decisions/0035.
 *
 * @param tiltDeg blade tilt from square, degrees
 * @param fenceDeg fence angle from square, degrees
 * @param lean which way the cut leans, seen with the face up that {@code faceUp} names
 * @param faceUp which face of the piece is up
 * @param cutFor what the cut is for, and with it which side is kept
 */
public record SawSetting(double tiltDeg, double fenceDeg, Lean lean, FaceUp faceUp, CutFor cutFor) {
    /** Which way the cut that makes an end of this piece leans as its board is drawn. */
    Lean leanAsDrawn(CuttingPlan.Cut piece) {
        return faceUp == (piece.turnedOver() ? FaceUp.INNER : FaceUp.OUTER) ? lean : lean.turnedOver();
    }

    /**
     * Which way a cut leans from square, for a person who stands at the saw with the board's left end on the left: a bevel by
     * its upper edge, a mitre by its far end.
     */
    public enum Lean {
        NONE,
        LEFT,
        RIGHT;

        /** As it leans once the board is turned over along its length. */
        Lean turnedOver() {
            return this == NONE ? NONE : this == LEFT ? RIGHT : LEFT;
        }

        static Lean of(int sign) {
            return sign == 0 ? NONE : sign < 0 ? LEFT : RIGHT;
        }
    }

    /** Which face of the piece is up. The board's left end stays on the left: it is turned over along its length. */
    public enum FaceUp {
        /** A square cut is the same from either face. */
        EITHER,
        /** The face that shows: outside, or on top. */
        OUTER,
        INNER;

        FaceUp turnedOver() {
            return this == EITHER ? EITHER : this == OUTER ? INNER : OUTER;
        }
    }

    /** What a cut is for. */
    public enum CutFor {
        /** A fresh end: what lies left of the blade is waste, what lies right of it is kept. */
        FRESH_END,
        /** A piece: it lies left of the blade, its fresh end on the left, against the stop where there is one. */
        PIECE
    }
}
