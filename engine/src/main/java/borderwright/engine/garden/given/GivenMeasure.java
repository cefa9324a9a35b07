package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One thing that was measured on site; in the document the first key tells which kind it is. */
public sealed interface GivenMeasure
        permits GivenMeasure.GivenTapeLength,
                GivenMeasure.GivenGaugeAngle,
                GivenMeasure.GivenBaselineOffset,
                GivenMeasure.GivenTapeChain,
                GivenMeasure.GivenLevelReading,
                GivenMeasure.GivenRise,
                GivenMeasure.GivenWallLean,
                GivenArc {

    /** What it was taken with; null when not given. */
    @Nullable
    Instrument with();

    /** A tape length between two points. */
    @Described("a tape length between two points")
    record GivenTapeLength(
            @Described(value = "the two points", example = "A B")
            Names tape,

            @Described(
                    value = "the length read",
                    example = "9.605 m",
                    atLeast = 1,
                    usuallyAtLeast = 50,
                    usuallyAtMost = 100_000)
            Length reads,

            @Described(value = "how it was held", otherwise = "level") @Nullable
            TapeHeld held,

            @Described(
                    value = "how far it may be out, as one standard deviation",
                    example = "3 mm",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length giveOrTake,

            @Described(value = "what it was taken with", otherwise = "tape up to 5 m, long tape beyond") @Nullable
            Instrument with)
            implements GivenMeasure {
        /** Nothing given but what is needed. */
        public static GivenTapeLength of(Names tape, Length reads) {
            return new GivenTapeLength(tape, reads, null, null, null);
        }
    }

    /** The angle between two directions seen from the middle point. */
    @Described("an angle taken with a gauge at the middle of three points")
    record GivenGaugeAngle(
            @Described(value = "the three points; the angle is at the middle one", example = "A B C")
            Names angle,

            @Described(
                    value =
                            "the angle read, up to 180 degrees between the two directions, or the angle inside the border when it is more; at a bend of a strip always the angle inside the strip",
                    example = "127 deg",
                    atLeast = 1,
                    atMost = 359)
            Angle reads,

            @Described(
                    value = "how far it may be out, as one standard deviation",
                    example = "0.5 deg",
                    otherwise = "by the instrument",
                    atLeast = 0.001)
            @Nullable
            Angle giveOrTake,

            @Described(value = "what it was taken with", otherwise = "gauge") @Nullable
            Instrument with)
            implements GivenMeasure {}

    /** A point fixed by its distance along a baseline and square off it. */
    @Described("a point measured along a baseline and square off it")
    record GivenBaselineOffset(
            @Described(value = "the point", example = "P") String offset,

            @Described(value = "the baseline's two ends; the tape starts at the first", example = "A B")
            Names baseline,

            @Described(
                    value = "distance along the baseline",
                    example = "3.20 m",
                    usuallyAtLeast = -100_000,
                    usuallyAtMost = 100_000)
            Length along,

            @Described(
                    value = "distance square off the baseline; 0 is on it",
                    example = "0.45 m",
                    atLeast = 0,
                    usuallyAtMost = 100_000)
            Length reads,

            @Described(
                    value = "which side of the baseline, looking from its first end to its second",
                    otherwise = "left")
            @Nullable
            LeftOrRight side,

            @Described(
                    value = "how far each may be out, as one standard deviation",
                    example = "5 mm",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length giveOrTake,

            @Described(value = "what it was taken with", otherwise = "tape up to 5 m, long tape beyond") @Nullable
            Instrument with)
            implements GivenMeasure {
        /** Nothing given but what is needed. */
        public static GivenBaselineOffset of(String offset, Names baseline, Length along, Length reads) {
            return new GivenBaselineOffset(offset, baseline, along, reads, null, null, null);
        }
    }

    /** Several short lengths, one after the other, along a straight line. */
    @Described("short lengths one after the other along a straight line")
    record GivenTapeChain(
            @Described(
                    value = "the points in order; those between lie on the straight line from the first to the last",
                    example = "A P Q B")
            Names chain,

            @Described(
                    value = "the lengths between them, in order",
                    example = "[1195 mm, 1204 mm, 1198 mm]",
                    usuallyAtMost = 50_000)
            List<Length> lengths,

            @Described(
                    value = "how far each may be out, as one standard deviation",
                    example = "2 mm",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length giveOrTake,

            @Described(
                    value =
                            "how straight the line is: how far a point between may stand off it, as one standard deviation",
                    otherwise = "5 mm",
                    atLeast = 0.01)
            @Nullable
            Length straight,

            @Described(value = "what they were taken with", otherwise = "tape up to 5 m, long tape beyond") @Nullable
            Instrument with)
            implements GivenMeasure {
        public GivenTapeChain {
            lengths = List.copyOf(lengths);
        }

        /** Nothing given but what is needed. */
        public static GivenTapeChain of(Names chain, List<Length> lengths) {
            return new GivenTapeChain(chain, lengths, null, null, null);
        }
    }

    /** Height of the ground at a point above the datum; negative below. */
    @Described("the height of the ground at a point above the datum string or mark")
    record GivenLevelReading(
            @Described(value = "the point", example = "A") String level,

            @Described(
                    value = "height above the datum; below it is negative",
                    example = "-452 mm",
                    usuallyAtLeast = -5000,
                    usuallyAtMost = 5000)
            Length reads,

            @Described(
                    value = "how far it may be out, as one standard deviation",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length giveOrTake,

            @Described(value = "what it was taken with", otherwise = "string line") @Nullable
            Instrument with)
            implements GivenMeasure {}

    /** Height of the second point above the first. */
    @Described("how much higher the ground is at the second point than at the first")
    record GivenRise(
            @Described(value = "the two points", example = "A B")
            Names rise,

            @Described(
                    value = "height of the second above the first; lower is negative",
                    example = "-96 mm",
                    usuallyAtLeast = -5000,
                    usuallyAtMost = 5000)
            Length reads,

            @Described(
                    value = "how far it may be out, as one standard deviation",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length giveOrTake,

            @Described(value = "what it was taken with", otherwise = "water level") @Nullable
            Instrument with)
            implements GivenMeasure {}

    /** How far a wall leans: its distance from a plumb line or string on the border's side, low and high. */
    @Described("how far a wall leans: its distance from one plumb line on the border's side, low and high")
    record GivenWallLean(
            @Described(value = "the edge's two corners", example = "A B")
            Names lean,

            @Described(
                    value = "distance from the plumb line to the wall at the height of the planter's top",
                    atLeast = 0,
                    usuallyAtMost = 1000)
            Length top,

            @Described(
                    value = "distance from the plumb line to the wall at the ground",
                    atLeast = 0,
                    usuallyAtMost = 1000)
            Length bottom,

            @Described(
                    value = "how far each may be out, as one standard deviation",
                    otherwise = "by the instrument",
                    atLeast = 0.01)
            @Nullable
            Length giveOrTake,

            @Described(value = "what it was taken with", otherwise = "tape") @Nullable
            Instrument with)
            implements GivenMeasure {}
}
