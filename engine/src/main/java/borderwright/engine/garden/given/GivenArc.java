package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.ArcTaken;
import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** A curved edge: how far a place on it stands off the chord between its corners, or how long it is along the wall. */
@Described(
        "a curved edge: how far it stands off the straight line between its two corners, or how long it is along the wall")
public record GivenArc(
        @Described(value = "the edge's two corners", example = "A B")
        Names arc,

        @Described(value = "the distance read", example = "310 mm", atLeast = 1, usuallyAtMost = 100_000)
        Length reads,

        @Described(value = "how it was taken", otherwise = "square off") @Nullable
        ArcTaken taken,

        @Described(
                value = "square off: how far along the straight line, from the first of the two corners",
                example = "1.2 m",
                otherwise = "its middle",
                atLeast = 1,
                usuallyAtMost = 100_000)
        @Nullable
        Length along,

        @Described(value = "which way it bulges") ArcBulge bulges,

        @Described(
                value = "how far it may be out, as one standard deviation",
                otherwise = "by the instrument",
                atLeast = 0.01)
        @Nullable
        Length giveOrTake,

        @Described(value = "what it was taken with", otherwise = "tape") @Nullable
        Instrument with)
        implements GivenMeasure {
    /** At the middle of the chord, nothing else given. */
    public static GivenArc of(Names arc, Length reads, ArcBulge bulges) {
        return new GivenArc(arc, reads, null, null, bulges, null, null);
    }
}
