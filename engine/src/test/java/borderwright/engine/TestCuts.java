package borderwright.engine;

import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.EndCut;

/** End cuts. Their words are not looked at. */
public final class TestCuts {
    private TestCuts() {}

    public static EndCut square() {
        return of(0, 0, EndCut.LongPoint.NONE, 0);
    }

    /** One that a saw at hand makes. */
    public static EndCut of(double tiltDeg, double fenceDeg, EndCut.LongPoint longPoint, double offsetMm) {
        return cut(tiltDeg, fenceDeg, longPoint, offsetMm, true);
    }

    /** One that no saw at hand makes. */
    public static EndCut outOfReach(double tiltDeg, double fenceDeg, EndCut.LongPoint longPoint, double offsetMm) {
        return cut(tiltDeg, fenceDeg, longPoint, offsetMm, false);
    }

    private static EndCut cut(
            double tiltDeg, double fenceDeg, EndCut.LongPoint longPoint, double offsetMm, boolean inRange) {
        return new EndCut(
                tiltDeg,
                fenceDeg,
                longPoint,
                offsetMm,
                CutMessage.SQUARE_CUT.of(),
                CutMessage.NO_SAW_LISTED.of(),
                inRange);
    }
}
