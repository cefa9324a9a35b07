package borderwright.engine.ground;

import borderwright.engine.message.Message;

/**
 * How far a planter keeps from something that it has to keep clear of.
 *
 * @param box the planter
 * @param from what it keeps clear of
 * @param what what the distance is of: ground dug, a wall, soil below something
 * @param wantedMm least distance wanted, mm
 * @param gotMm distance as planned, mm; below 0 where soil stands above the level
 * @param verdict whether that is enough
 */
public record SiteClearance(String box, Message from, Message what, double wantedMm, double gotMm, Verdict verdict) {
    /** Whether a clearance is kept. */
    public enum Verdict {
        HOLDS,
        DOES_NOT_HOLD,
        /** Something must be found out or done with care before it holds. */
        NOT_SHOWN
    }

    static Verdict of(double wantedMm, double gotMm) {
        return gotMm >= wantedMm - 0.5 ? Verdict.HOLDS : Verdict.DOES_NOT_HOLD;
    }
}
