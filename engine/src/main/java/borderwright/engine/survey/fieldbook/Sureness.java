package borderwright.engine.survey.fieldbook;

import borderwright.engine.garden.Measure;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** How far each measure may be out, as one standard deviation: as given, or by its instrument, or by the usual instrument. */
public final class Sureness {
    /** A short tape reaches this far; beyond it a long tape is taken (default). */
    private static final double SHORT_TAPE_MM = 5000;
    /** How far a point between may stand off the line of a chain (default). */
    private static final double STRAIGHT_MM = 5;

    private Sureness() {}

    /** Of a length taken with a tape, mm. */
    public static double ofTape(double lengthMm, @Nullable Length said, @Nullable Instrument by) {
        Instrument usual = Math.abs(lengthMm) <= SHORT_TAPE_MM ? Instrument.TAPE : Instrument.LONG_TAPE;
        return length(lengthMm, said, by, usual);
    }

    /** Of a level reading, mm. */
    static double of(Measure.LevelReading level) {
        return length(level.is().mm(), level.sure(), level.by(), Instrument.STRING_LINE);
    }

    /** Of a rise, mm. */
    static double of(Measure.Rise rise) {
        return length(rise.is().mm(), rise.sure(), rise.by(), Instrument.WATER_LEVEL);
    }

    /** Of a gauge angle, radians. */
    static double of(Measure.GaugeAngle gauge) {
        if (gauge.sure() != null) {
            return gauge.sure().radians();
        }
        Instrument by = gauge.by() == null ? Instrument.GAUGE : gauge.by();
        return StrictMath.toRadians(by.angleSdDeg());
    }

    /** Of the straightness of a chain, mm. */
    static double straight(Measure.TapeChain chain) {
        return chain.straight() == null ? STRAIGHT_MM : chain.straight().mm();
    }

    private static double length(double lengthMm, @Nullable Length said, @Nullable Instrument by, Instrument usual) {
        return said != null ? said.mm() : (by == null ? usual : by).lengthSdMm(lengthMm);
    }
}
