package borderwright.engine.survey;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.vocabulary.ArcTaken;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.survey.fieldbook.ReadingMessage;

/**
 * One reading of a curved edge.
 *
 * @param where field path in the document
 * @param measure as it was read
 */
record CurveReading(String where, Measure.ArcReading measure) {
    double readMm() {
        return measure.reads().mm();
    }

    boolean isTape() {
        return measure.taken() == ArcTaken.ALONG_THE_WALL;
    }

    /** Where along the chord; the middle for a tape along the curve. */
    double alongMm(double chordMm) {
        return isTape() ? chordMm / 2 : measure.along().map(Length::mm).orElse(chordMm / 2);
    }

    void into(CurveFit fit, double chordMm) {
        if (isTape()) {
            fit.tape(readMm(), measure.reads().sdMm());
        } else {
            fit.offset(alongMm(chordMm), readMm(), measure.reads().sdMm());
        }
    }

    Message name() {
        return ReadingMessage.READING_ARC.of(measure.arc().dashed(), measure.taken());
    }
}
