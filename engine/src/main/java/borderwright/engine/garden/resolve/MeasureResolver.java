package borderwright.engine.garden.resolve;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.Measure.Reading;
import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.vocabulary.ArcTaken;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One measure, and how far it may be out: as given, or by its instrument, or by the instrument that is usual. */
final class MeasureResolver {
    /** How far a point between may stand off the line of a chain. */
    private static final Length STRAIGHT = Length.ofMm(5);

    private final Ledger in;

    MeasureResolver(Ledger in) {
        this.in = in;
    }

    Measure measure(GivenMeasure given) {
        if (given instanceof GivenMeasure.GivenTapeLength g) {
            return new Measure.TapeLength(
                    g.tape(),
                    taped(g.reads(), g.giveOrTake(), g.with()),
                    in.or("held", g.held(), TapeHeld.LEVEL, "the length is horizontal"),
                    Optional.ofNullable(g.with()));
        }
        if (given instanceof GivenMeasure.GivenGaugeAngle g) {
            return new Measure.GaugeAngle(g.angle(), g.reads(), angleSdRad(g), Optional.ofNullable(g.with()));
        }
        if (given instanceof GivenMeasure.GivenBaselineOffset g) {
            return new Measure.BaselineOffset(
                    g.offset(),
                    g.baseline(),
                    taped(g.along(), g.giveOrTake(), g.with()),
                    taped(g.reads(), g.giveOrTake(), g.with()),
                    in.or("side", g.side(), LeftOrRight.LEFT, "looking from its first end to its second"),
                    Optional.ofNullable(g.with()));
        }
        if (given instanceof GivenMeasure.GivenTapeChain g) {
            List<Reading> lengths = g.lengths().stream()
                    .map(length -> taped(length, g.giveOrTake(), g.with()))
                    .toList();
            return new Measure.TapeChain(
                    g.chain(),
                    lengths,
                    in.or("straight", g.straight(), STRAIGHT, Ledger.PRACTICE).mm(),
                    Optional.ofNullable(g.with()));
        }
        return heightOrEdge(given);
    }

    private Measure heightOrEdge(GivenMeasure given) {
        if (given instanceof GivenMeasure.GivenLevelReading g) {
            Reading height = read(g.reads(), g.giveOrTake(), g.with(), Instrument.STRING_LINE);
            return new Measure.LevelReading(g.level(), height, Optional.ofNullable(g.with()));
        }
        if (given instanceof GivenMeasure.GivenRise g) {
            Reading height = read(g.reads(), g.giveOrTake(), g.with(), Instrument.WATER_LEVEL);
            return new Measure.Rise(g.rise(), height, Optional.ofNullable(g.with()));
        }
        if (given instanceof GivenMeasure.GivenWallLean g) {
            return new Measure.WallLean(
                    g.lean(),
                    taped(g.top(), g.giveOrTake(), g.with()),
                    taped(g.bottom(), g.giveOrTake(), g.with()),
                    Optional.ofNullable(g.with()));
        }
        if (given instanceof GivenArc g) {
            return new Measure.ArcReading(
                    g.arc(),
                    taped(g.reads(), g.giveOrTake(), g.with()),
                    in.or("taken", g.taken(), ArcTaken.SQUARE_OFF, ""),
                    Optional.ofNullable(g.along()),
                    g.bulges(),
                    Optional.ofNullable(g.with()));
        }
        throw new IllegalArgumentException("unknown kind of measure: " + given);
    }

    private Reading taped(Length length, @Nullable Length giveOrTake, @Nullable Instrument with) {
        return read(length, giveOrTake, with, Instrument.tapeFor(length.mm()));
    }

    private Reading read(Length length, @Nullable Length giveOrTake, @Nullable Instrument with, Instrument usual) {
        if (giveOrTake != null) {
            in.given("give or take", giveOrTake, "");
            return new Reading(length, giveOrTake.mm());
        }
        Instrument taken = with == null ? usual : with;
        in.byDefault("give or take", "as of a " + word(taken), Ledger.PRACTICE);
        return new Reading(length, taken.lengthSdMm(length.mm()));
    }

    private double angleSdRad(GivenMeasure.GivenGaugeAngle g) {
        Angle giveOrTake = g.giveOrTake();
        if (giveOrTake != null) {
            return in.given("give or take", giveOrTake, "").radians();
        }
        Instrument taken = g.with() == null ? Instrument.GAUGE : g.with();
        in.byDefault("give or take", "as of a " + word(taken), Ledger.PRACTICE);
        return StrictMath.toRadians(taken.angleSdDeg());
    }

    private static String word(Instrument instrument) {
        return instrument.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
