package borderwright.engine.survey;

import borderwright.engine.measure.Instrument;
import borderwright.engine.survey.SurveyReport.Ellipse;
import borderwright.engine.survey.SurveyReport.NextMeasure;
import java.util.ArrayList;
import java.util.List;

/**
 * The measure that would help most, found by adding each possible one in turn.
 *
 * <p>Adding an observation with row {@code a} and variance {@code s2} lowers the cofactors by
 * {@code Qa'aQ / (s2 + aQa')}: no new adjustment is needed. Readings that nothing checks come first, then the worst
 * corner; a tape that stays inside the border is easier to hold than one that does not.
 */
final class NextMeasureFinder {
    /** Below this redundancy number a slip would have to be gross to show. */
    private static final double CHECKED = 0.1;

    private static final double NOT_CHECKED = 0.05;

    private static final double SHORTEST_MM = 100;
    private static final double LONGEST_MM = 30_000;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final SurveyWords words;
    private final Network network;

    NextMeasureFinder(FieldBook book, Adjustment adjustment, SurveyWords words) {
        this.book = book;
        this.adjustment = adjustment;
        this.words = words;
        this.network = adjustment.network();
    }

    private record Possible(Observation observation, String what, double ease) {}

    private record Gain(Possible possible, List<FieldBook.Entry> checks, double worstBefore, double worstAfter) {
        double score() {
            double share = worstBefore > 0 ? 1 - worstAfter / worstBefore : 0;
            return 10 * checks.size() + 5 * share + possible.ease();
        }
    }

    NextMeasure find() {
        Gain best = null;
        for (Possible possible : tapes()) {
            Gain gain = gain(possible);
            best = best == null || gain.score() > best.score() + 1e-9 ? gain : best;
        }
        if (best == null || best.checks.isEmpty()) {
            for (Possible possible : rises()) {
                Gain gain = gain(possible);
                if (best == null || (!gain.checks.isEmpty() && gain.score() > best.score() + 1e-9)) {
                    best = gain;
                }
            }
        }
        if (best == null) {
            return new NextMeasure("second tape of any length", "would show a slip in it");
        }
        return new NextMeasure(best.possible.what, why(best));
    }

    private String why(Gain gain) {
        List<String> parts = new ArrayList<>();
        int checks = gain.checks.size();
        if (checks > 0) {
            parts.add("check "
                    + (checks == 1
                            ? gain.checks.get(0).what() + ", which nothing checks now"
                            : checks + " readings that nothing checks now"));
        }
        if (gain.worstAfter < 0.95 * gain.worstBefore) {
            parts.add("bring the worst corner from " + words.small(gain.worstBefore) + " to "
                    + words.small(gain.worstAfter));
        }
        if (parts.isEmpty()) {
            parts.add(
                    "guard against a slip; the worst corner is known to " + words.small(gain.worstBefore) + " already");
        }
        return "would " + String.join(" and ", parts);
    }

    /** Lengths between two points of the plan: those not taped yet, and those taped once, again. */
    private List<Possible> tapes() {
        List<Possible> tapes = new ArrayList<>();
        Sight sight = new Sight(book.order(), adjustment.positions());
        for (int a = 0; a < network.points(); a++) {
            for (int b = a + 1; b < network.points(); b++) {
                if (!network.inPlan(a) || !network.inPlan(b)) {
                    continue;
                }
                double length = adjustment
                        .positions()
                        .at(a)
                        .distanceMm(adjustment.positions().at(b));
                if (length < SHORTEST_MM || length > LONGEST_MM) {
                    continue;
                }
                boolean again = isTaped(a, b);
                double ease = (again ? -2 : 0) + sight.ease(a, b);
                String what = (again ? "second tape" : "tape") + " from " + network.name(a) + " to " + network.name(b);
                double sd = Sureness.ofTape(length, null, null);
                tapes.add(new Possible(new Observation.Distance(a, b, length, sd), what, ease));
            }
        }
        return tapes;
    }

    private boolean isTaped(int a, int b) {
        return network.observations().stream().anyMatch(o -> o.isTape(a, b));
    }

    private List<Possible> rises() {
        List<Possible> rises = new ArrayList<>();
        double sd = Instrument.WATER_LEVEL.lengthSdMm(0);
        for (int a = 0; a < network.points(); a++) {
            for (int b = a + 1; b < network.points(); b++) {
                if (network.hasHeight(a) && network.hasHeight(b)) {
                    String what = "rise from " + network.name(a) + " to " + network.name(b);
                    rises.add(new Possible(new Observation.HeightDifference(a, b, 0, sd), what, 0));
                }
            }
        }
        return rises;
    }

    private Gain gain(Possible possible) {
        Observation added = possible.observation;
        double spread = added.sd() * added.sd() + adjustment.variance(added);
        List<FieldBook.Entry> checks = new ArrayList<>();
        for (FieldBook.Entry entry : book.entries()) {
            int number = entry.observation();
            if (number < 0
                    || entry.kind() == FieldBook.Kind.STRAIGHT
                    || adjustment.redundancyNumber(number) >= NOT_CHECKED) {
                continue;
            }
            Observation checked = network.observations().get(number);
            double covariance = adjustment.covariance(checked, added);
            double variance = adjustment.variance(checked) - covariance * covariance / spread;
            if (1 - variance / (checked.sd() * checked.sd()) >= CHECKED) {
                checks.add(entry);
            }
        }
        double before = 0;
        double after = 0;
        for (int corner : book.order().corners()) {
            before = Math.max(before, adjustment.ellipse(corner).majorMm());
            after = Math.max(after, ellipseAfter(corner, added, spread).majorMm());
        }
        return new Gain(possible, checks, before, after);
    }

    private Ellipse ellipseAfter(int corner, Observation added, double spread) {
        int place = network.placeUnknown(corner);
        double x = adjustment.covariance(added, place);
        double y = adjustment.covariance(added, place + 1);
        return Adjustment.ellipse(
                adjustment.cofactor(place, place) - x * x / spread,
                adjustment.cofactor(place, place + 1) - x * y / spread,
                adjustment.cofactor(place + 1, place + 1) - y * y / spread);
    }
}
