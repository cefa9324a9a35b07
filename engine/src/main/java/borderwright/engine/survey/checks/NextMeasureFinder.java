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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The measure that would help most, found by adding each possible one in turn.
 *
 * <p>Adding an observation with row {@code a} and variance {@code s2} lowers the cofactors by
 * {@code Qa'aQ / (s2 + aQa')}: no new adjustment is needed. What counts first is what it leaves of the slips that would go
 * unnoticed and spoil a gap, above all of the worst of them; then the worst corner. A tape that stays inside the border is
 * easier to hold than one that does not.
 */
public final class NextMeasureFinder {
    private static final double SIXTEENTH_MM = UnitFactors.MM_PER_INCH / 16;
    /** Readings that are looked at, those whose slips do most harm. */
    private static final int MOST_WEAK = 30;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final Network network;
    private final PossibleMeasures measures;
    private final UnnoticedSlips slips;
    private final List<Weak> weak;
    private final double worstNow;

    public NextMeasureFinder(FieldBook book, Adjustment adjustment) {
        this.book = book;
        this.adjustment = adjustment;
        this.network = adjustment.network();
        this.measures = new PossibleMeasures(book, adjustment);
        this.slips = new UnnoticedSlips(book, adjustment);
        this.weak = weak();
        this.worstNow = HoldingTape.worstMm(book, adjustment);
    }

    /**
     * A reading in which a slip could go unnoticed and spoil a gap.
     *
     * @param row its partial derivatives at the adjusted places
     * @param sd of its observation, mm or radians
     * @param share of the room that such a slip takes, above 1
     */
    private record Weak(
            FieldBook.Entry entry,
            DesignRow row,
            Adjustment.Influence influence,
            double sd,
            double redundancy,
            double share) {}

    private List<Weak> weak() {
        List<Weak> all = new ArrayList<>();
        for (FieldBook.Entry entry : book.entries()) {
            double share = entry.observation() < 0 ? 0 : slips.of(entry).share();
            if (share > 1) {
                Observation its = network.observations().get(entry.observation());
                DesignRow row = new DesignRow(network).of(its, adjustment.positions());
                double redundancy = adjustment.redundancyNumber(entry.observation());
                all.add(new Weak(entry, row, adjustment.influence(its), its.sd(), redundancy, share));
            }
        }
        // shares equal but for rounding keep the order of the document
        all.sort(Comparator.comparingLong(one -> -StrictMath.round(one.share * 1e4)));
        return List.copyOf(all.subList(0, Math.min(all.size(), MOST_WEAK)));
    }

    /**
     * What a measure brings.
     *
     * @param left how many of the weak readings stay weak with it
     * @param weakestAfter share of its room that the weakest reading's unnoticed slip takes then
     * @param redundancyAfter of the weakest reading; 0 where none is weak
     */
    private record Gain(Possible possible, int left, double weakestAfter, double redundancyAfter, double worstAfter) {}

    private double score(Gain gain) {
        double share = worstNow > 0 ? 1 - gain.worstAfter / worstNow : 0;
        double settled = weak.size() - gain.left;
        double weakest = weak.isEmpty() ? 0 : Math.min(1, 1 / gain.weakestAfter) - Math.min(1, 1 / weak.get(0).share);
        return 10 * settled + 20 * weakest + 5 * share + gain.possible.ease();
    }

    public NextMeasure find() {
        Gain best = null;
        for (Possible possible : measures.tapes()) {
            Gain gain = gain(possible);
            best = best == null || score(gain) > score(best) + 1e-9 ? gain : best;
        }
        if (weak.isEmpty()) {
            Optional<NextMeasure> rise = new UncheckedHeights(book, adjustment, measures).rise();
            if (rise.isPresent()) {
                return rise.get();
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

    private Message why(Gain gain) {
        if (gain.redundancyAfter <= 0) {
            double after = gain.worstAfter;
            return after < 0.95 * worstNow && readsLess(after, worstNow)
                    ? NextMeasureMessage.NEXT_IMPROVES.of(worstNow, after)
                    : NextMeasureMessage.NEXT_GUARDS.of(worstNow);
        }
        Weak weakest = weak.get(0);
        Message name = weakest.entry.name();
        Message shows = slip(weakest, gain.redundancyAfter);
        Left left = gain.left == 0 ? Left.NONE : Left.SOME;
        return weakest.redundancy > 0
                ? NextMeasureMessage.NEXT_SHOWS_LESS.of(shows, name, slip(weakest, weakest.redundancy), left)
                : NextMeasureMessage.NEXT_SHOWS.of(shows, name, left);
    }

    /** Whether slips that could spoil a gap would still go unnoticed. */
    private enum Left {
        NONE,
        SOME
    }

    /** The least slip that shows, as it is read. */
    private static Message slip(Weak weak, double redundancy) {
        return DisagreementMessage.value(
                Adjustment.SHOWS_FROM * weak.entry.sd() / Math.sqrt(redundancy), weak.entry.unit());
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
        int left = 0;
        double weakestAfter = 0;
        double redundancyAfter = 0;
        for (int i = 0; i < weak.size(); i++) {
            Weak reading = weak.get(i);
            double covariance = influence.on(reading.row);
            double redundancy = UncheckedHeights.with(reading.redundancy, covariance, spread, reading.sd);
            double share = shareAfter(reading, influence, covariance / spread, redundancy);
            left += share > 1 ? 1 : 0;
            if (i == 0) {
                weakestAfter = share;
                redundancyAfter = redundancy;
            }
        }
        left += weak.isEmpty() || ownShare(added, influence, spread) <= 1 ? 0 : 1;
        double after = 0;
        for (int corner : book.order().corners()) {
            after = Math.max(after, ellipseAfter(corner, influence, spread).majorMm());
        }
        return new Gain(possible, left, weakestAfter, redundancyAfter, after);
    }

    /** What an unnoticed slip in the added observation itself takes of the room. */
    private double ownShare(Observation added, Adjustment.Influence influence, double spread) {
        double redundancy = influence.on(added) / spread;
        if (redundancy < Adjustment.NOT_CONTROLLED) {
            return Double.POSITIVE_INFINITY;
        }
        double perUnknown = Adjustment.SHOWS_FROM / Math.sqrt(redundancy) * added.sd() / spread;
        return slips.worst(unknown -> influence.on(unknown) * perUnknown).share();
    }

    /** What a weak reading's unnoticed slip takes of the room once another observation is there. */
    private double shareAfter(Weak reading, Adjustment.Influence added, double perAdded, double redundancy) {
        if (redundancy < Adjustment.NOT_CONTROLLED) {
            return Double.POSITIVE_INFINITY;
        }
        double deviations = Adjustment.SHOWS_FROM / Math.sqrt(redundancy) / reading.sd;
        return slips.worst(unknown -> (reading.influence.on(unknown) - perAdded * added.on(unknown)) * deviations)
                .share();
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
