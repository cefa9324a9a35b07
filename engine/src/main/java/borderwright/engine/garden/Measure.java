package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One thing that was measured on site; in the document the first key tells which kind it is. */
public sealed interface Measure {

    /** What it was taken with; null when not said. */
    @Nullable
    Instrument by();

    /** A tape length between two points. */
    record TapeLength(
            Names tape,

            Length is,

            @Nullable TapeHeld held,

            @Nullable Length sure,

            @Nullable Instrument by) implements Measure {}

    /** The angle between two directions seen from the middle point. */
    record GaugeAngle(
            Names angle,

            Angle is,

            @Nullable Angle sure,

            @Nullable Instrument by) implements Measure {}

    /** A point fixed by its distance along a baseline and square off it. */
    record BaselineOffset(
            String offset,

            Names from,

            Length along,

            Length is,

            @Nullable LeftOrRight side,

            @Nullable Length sure,

            @Nullable Instrument by)
            implements Measure {}

    /** Several short lengths, one after the other, along a straight line. */
    record TapeChain(
            Names chain,

            List<Length> lengths,

            @Nullable Length sure,

            @Nullable Length straight,

            @Nullable Instrument by)
            implements Measure {
        public TapeChain {
            lengths = List.copyOf(lengths);
        }
    }

    /** Height of the ground at a point above the datum; negative below. */
    record LevelReading(
            String level,

            Length is,

            @Nullable Length sure,

            @Nullable Instrument by) implements Measure {}

    /** Height of the second point above the first. */
    record Rise(
            Names rise,

            Length is,

            @Nullable Length sure,

            @Nullable Instrument by) implements Measure {}

    /** How far a wall leans: its distance from a plumb line or string on the border's side, low and high. */
    record WallLean(
            Names lean,

            Length top,

            Length bottom,

            @Nullable Length sure,

            @Nullable Instrument by) implements Measure {}

    /** A curved edge: how far its middle stands off the straight chord between its corners. */
    record ArcRise(
            Names arc,

            Length is,

            ArcBulge bulges,

            @Nullable Length sure,

            @Nullable Instrument by) implements Measure {}
}
