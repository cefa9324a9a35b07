package borderwright.engine.survey.checks;

import borderwright.engine.measure.UnitFactors;
import borderwright.engine.message.Message;
import borderwright.engine.survey.checks.PossibleMeasures.Possible;
import borderwright.engine.survey.checks.SurveyReport.NextMeasure;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.DesignRow;
import borderwright.engine.survey.network.ErrorEllipse;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The measure that would help most, found by adding each possible one in turn.
 *
 * <p>Adding an observation with row {@code a} and variance {@code s2} lowers the cofactors by
 * {@code Qa'aQ / (s2 + aQa')}: no new adjustment is needed. Readings that nothing checks come first, then the worst
 * corner; a tape that stays inside the border is easier to hold than one that does not.
 */
public final class NextMeasureFinder {
    /** Below this redundancy number a slip would have to be gross to show. */
    private static final double CHECKED = 0.1;

    private static final double NOT_CHECKED = 0.05;
    private static final double SIXTEENTH_MM = UnitFactors.MM_PER_INCH / 16;
    /** Lengths tried one by one for a corner that is all but free to move. */
    private static final int MOST_TRIED = 200;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final Network network;
    private final PossibleMeasures measures;
    private final List<Unchecked> unchecked;
    private final double worstNow;

    public NextMeasureFinder(FieldBook book, Adjustment adjustment) {
        this.book = book;
        this.adjustment = adjustment;
        this.network = adjustment.network();
        this.measures = new PossibleMeasures(book, adjustment);
        this.unchecked = unchecked(book, adjustment);
        this.worstNow = worst(adjustment);
    }

    private static List<Unchecked> unchecked(FieldBook book, Adjustment adjustment) {
        List<Unchecked> unchecked = new ArrayList<>();
        for (FieldBook.Entry entry : book.entries()) {
            int number = entry.observation();
            if (number >= 0
                    && entry.kind() != FieldBook.Kind.STRAIGHT
                    && adjustment.redundancyNumber(number) < NOT_CHECKED) {
                Observation observation = adjustment.network().observations().get(number);
                DesignRow row = new DesignRow(adjustment.network()).of(observation, adjustment.positions());
                unchecked.add(new Unchecked(entry, row, adjustment.redundancyNumber(number), observation.sd()));
            }
        }
        return unchecked;
    }

    /** A reading that nothing checks. */
    private record Unchecked(FieldBook.Entry entry, DesignRow row, double redundancy, double sd) {}

    private record Gain(Possible possible, List<FieldBook.Entry> checks, double worstBefore, double worstAfter) {
        double score() {
            double share = worstBefore > 0 ? 1 - worstAfter / worstBefore : 0;
            return 10 * checks.size() + 5 * share + possible.ease();
        }
    }

    public NextMeasure find() {
        Gain best = null;
        for (Possible possible : measures.tapes()) {
            Gain gain = gain(possible);
            best = best == null || gain.score() > best.score() + 1e-9 ? gain : best;
        }
        if (best == null || best.checks.isEmpty()) {
            for (Possible possible : measures.rises()) {
                Gain gain = gain(possible);
                if (best == null || (!gain.checks.isEmpty() && gain.score() > best.score() + 1e-9)) {
                    best = gain;
                }
            }
        }
        if (best == null) {
            return new NextMeasure(
                    NextMeasureMessage.NEXT_SECOND_TAPE_OF_ANY.of(), NextMeasureMessage.NEXT_SHOWS_A_SLIP.of());
        }
        return new NextMeasure(best.possible.name(), why(best));
    }

    /** A measure that would tell the suspects apart. */
    public static NextMeasure separating(Message measure, int suspects, FieldBook.Entry leading) {
        return new NextMeasure(
                measure,
                suspects == 1
                        ? NextMeasureMessage.NEXT_TELLS_WHETHER.of(leading.name())
                        : NextMeasureMessage.NEXT_TELLS_WHICH.of(suspects));
    }

    /** A reading that the others contradict, taken again. */
    public static NextMeasure repeating(FieldBook.Entry wrong) {
        return new NextMeasure(
                NextMeasureMessage.NEXT_ONCE_MORE.of(wrong.name()), NextMeasureMessage.NEXT_CORRECTS.of());
    }

    /**
     * A new length that would hold the worst corner.
     *
     * @param heldMm half the long axis of the worst corner's ellipse with it, mm
     */
    record HoldingTape(String from, String to, double heldMm) {}

    /**
     * The new length that helps the worst corner most; empty when none can be taken. A corner that is all but free has
     * cofactors of rounding, so each length is put into the network afresh.
     */
    Optional<HoldingTape> forTheWorstCorner() {
        Optional<HoldingTape> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        List<Possible> tapes = measures.tapes();
        for (Possible possible : tapes.subList(0, Math.min(tapes.size(), MOST_TRIED))) {
            Network more = network.inserting(network.observations().size(), possible.observation());
            double worst =
                    Adjustment.at(more, adjustment.positions()).map(this::worst).orElse(Double.POSITIVE_INFINITY);
            // the same but for rounding: the first in the order of the corners
            if (worst < least * (1 - 1e-6) && possible.observation() instanceof Observation.Distance tape) {
                least = worst;
                best = Optional.of(new HoldingTape(network.name(tape.a()), network.name(tape.b()), worst));
            }
        }
        return best;
    }

    private double worst(Adjustment adjusted) {
        double worst = 0;
        for (int corner : book.order().corners()) {
            worst = Math.max(worst, adjusted.ellipse(corner).majorMm());
        }
        return worst;
    }

    private static Message why(Gain gain) {
        int checks = gain.checks.size();
        double before = gain.worstBefore;
        double after = gain.worstAfter;
        boolean improves = after < 0.95 * before && readsLess(after, before);
        if (checks == 0) {
            return improves
                    ? NextMeasureMessage.NEXT_IMPROVES.of(before, after)
                    : NextMeasureMessage.NEXT_GUARDS.of(before);
        }
        if (checks == 1) {
            Message reading = gain.checks.get(0).name();
            return improves
                    ? NextMeasureMessage.NEXT_CHECKS_ONE_AND_IMPROVES.of(reading, before, after)
                    : NextMeasureMessage.NEXT_CHECKS_ONE.of(reading);
        }
        return improves
                ? NextMeasureMessage.NEXT_CHECKS_MANY_AND_IMPROVES.of(checks, before, after)
                : NextMeasureMessage.NEXT_CHECKS_MANY.of(checks);
    }

    /** Whether a length reads less than another as it is printed, to the millimetre and to the sixteenth of an inch. */
    private static boolean readsLess(double lessMm, double moreMm) {
        return Math.round(lessMm) < Math.round(moreMm)
                && Math.round(lessMm / SIXTEENTH_MM) < Math.round(moreMm / SIXTEENTH_MM);
    }

    private Gain gain(Possible possible) {
        Observation added = possible.observation();
        Adjustment.Influence influence = adjustment.influence(added);
        double spread = added.sd() * added.sd() + influence.on(added);
        List<FieldBook.Entry> checks = new ArrayList<>();
        for (Unchecked reading : unchecked) {
            double covariance = influence.on(reading.row);
            double share = reading.redundancy + covariance * covariance / spread / (reading.sd * reading.sd);
            if (share >= CHECKED) {
                checks.add(reading.entry);
            }
        }
        double after = 0;
        for (int corner : book.order().corners()) {
            after = Math.max(after, ellipseAfter(corner, influence, spread).majorMm());
        }
        return new Gain(possible, checks, worstNow, after);
    }

    private ErrorEllipse ellipseAfter(int corner, Adjustment.Influence influence, double spread) {
        int place = network.placeUnknown(corner);
        double x = influence.on(place);
        double y = influence.on(place + 1);
        return Adjustment.ellipse(
                adjustment.cofactor(place, place) - x * x / spread,
                adjustment.cofactor(place, place + 1) - x * y / spread,
                adjustment.cofactor(place + 1, place + 1) - y * y / spread);
    }
}
