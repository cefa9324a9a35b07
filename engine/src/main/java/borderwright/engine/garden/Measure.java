package borderwright.engine.garden;

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
    @Says("a tape length between two points")
    record TapeLength(
            @Says(value = "the two points", example = "A B") Names tape,

            @Says(value = "the length read", example = "9.605 m", atLeast = 1)
            Length is,

            @Says(value = "how it was held", otherwise = "level") @Nullable
            Held held,

            @Says(
                    value = "how sure it is, as one standard deviation",
                    example = "3 mm",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length sure,

            @Says(value = "what it was taken with", otherwise = "tape up to 5 m, long tape beyond") @Nullable
            Instrument by)
            implements Measure {}

    /** The angle between two directions seen from the middle point. */
    @Says("an angle taken with a gauge at the middle of three points")
    record GaugeAngle(
            @Says(value = "the three points; the angle is at the middle one", example = "A B C")
            Names angle,

            @Says(
                    value =
                            "the angle read, up to 180 degrees between the two directions, or the angle inside the border when it is more; at a bend of a strip always the angle inside the strip",
                    example = "127 deg",
                    atLeast = 1,
                    atMost = 359)
            Angle is,

            @Says(
                    value = "how sure it is, as one standard deviation",
                    example = "0.5 deg",
                    otherwise = "by the instrument",
                    atLeast = 0.001)
            @Nullable
            Angle sure,

            @Says(value = "what it was taken with", otherwise = "gauge") @Nullable
            Instrument by)
            implements Measure {}

    /** A point fixed by its distance along a baseline and square off it. */
    @Says("a point measured along a baseline and square off it")
    record BaselineOffset(
            @Says(value = "the point", example = "P") String offset,

            @Says(value = "the baseline's two ends; the tape starts at the first", example = "A B")
            Names from,

            @Says(value = "distance along the baseline", example = "3.20 m")
            Length along,

            @Says(value = "distance square off the baseline; 0 is on it", example = "0.45 m", atLeast = 0)
            Length is,

            @Says(value = "which side of the baseline, looking from its first end to its second", otherwise = "left")
            @Nullable
            Hand side,

            @Says(
                    value = "how sure each is, as one standard deviation",
                    example = "5 mm",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length sure,

            @Says(value = "what it was taken with", otherwise = "tape up to 5 m, long tape beyond") @Nullable
            Instrument by)
            implements Measure {}

    /** Several short lengths, one after the other, along a straight line. */
    @Says("short lengths one after the other along a straight line")
    record TapeChain(
            @Says(
                    value = "the points in order; those between lie on the straight line from the first to the last",
                    example = "A P Q B")
            Names chain,

            @Says(value = "the lengths between them, in order", example = "[1195 mm, 1204 mm, 1198 mm]")
            List<Length> lengths,

            @Says(
                    value = "how sure each is, as one standard deviation",
                    example = "2 mm",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length sure,

            @Says(
                    value =
                            "how straight the line is: how far a point between may stand off it, as one standard deviation",
                    otherwise = "5 mm",
                    atLeast = 0.01)
            @Nullable
            Length straight,

            @Says(value = "what they were taken with", otherwise = "tape up to 5 m, long tape beyond") @Nullable
            Instrument by)
            implements Measure {
        public TapeChain {
            lengths = List.copyOf(lengths);
        }
    }

    /** Height of the ground at a point above the datum; negative below. */
    @Says("the height of the ground at a point above the datum string or mark")
    record LevelReading(
            @Says(value = "the point", example = "A") String level,

            @Says(value = "height above the datum; below it is negative", example = "-452 mm")
            Length is,

            @Says(value = "how sure it is, as one standard deviation", otherwise = "by the instrument", atLeast = 0.01)
            @Nullable
            Length sure,

            @Says(value = "what it was taken with", otherwise = "string line") @Nullable
            Instrument by)
            implements Measure {}

    /** Height of the second point above the first. */
    @Says("how much higher the ground is at the second point than at the first")
    record Rise(
            @Says(value = "the two points", example = "A B") Names rise,

            @Says(value = "height of the second above the first; lower is negative", example = "-96 mm")
            Length is,

            @Says(value = "how sure it is, as one standard deviation", otherwise = "by the instrument", atLeast = 0.01)
            @Nullable
            Length sure,

            @Says(value = "what it was taken with", otherwise = "water level") @Nullable
            Instrument by)
            implements Measure {}

    /** How far a wall leans: its distance from a plumb line or string on the border's side, low and high. */
    @Says("how far a wall leans: its distance from one plumb line on the border's side, low and high")
    record WallLean(
            @Says(value = "the edge's two corners", example = "A B")
            Names lean,

            @Says(value = "distance from the plumb line to the wall at the height of the planter's top", atLeast = 0)
            Length top,

            @Says(value = "distance from the plumb line to the wall at the ground", atLeast = 0)
            Length bottom,

            @Says(
                    value = "how sure each is, as one standard deviation",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length sure,

            @Says(value = "what it was taken with", otherwise = "tape") @Nullable
            Instrument by)
            implements Measure {}

    /** A curved edge: how far its middle stands off the straight chord between its corners. */
    @Says("a curved edge: how far its middle stands off the straight line between its two corners")
    record ArcRise(
            @Says(value = "the edge's two corners", example = "A B")
            Names arc,

            @Says(value = "the rise at the middle of the chord", example = "310 mm", atLeast = 1)
            Length is,

            @Says(value = "which way it bulges") Bulge bulges,

            @Says(value = "how sure it is, as one standard deviation", otherwise = "by the instrument", atLeast = 0.01)
            @Nullable
            Length sure,

            @Says(value = "what it was taken with", otherwise = "tape") @Nullable
            Instrument by)
            implements Measure {}

    /** How a tape was held. */
    enum Held {
        @Says("level: the length is horizontal")
        LEVEL,
        @Says("along the ground: the length is reduced by the levels of its ends")
        ALONG_THE_GROUND
    }

    /** Left or right of a direction of view. */
    enum Hand {
        @Says("to the left")
        LEFT,
        @Says("to the right")
        RIGHT
    }

    /** Which way a curved edge bulges. */
    enum Bulge {
        @Says("away from the border: the border gains ground")
        OUTWARD,
        @Says("into the border: the border loses ground")
        INWARD
    }
}
