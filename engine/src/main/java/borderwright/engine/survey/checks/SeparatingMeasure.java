package borderwright.engine.survey.checks;

import borderwright.engine.message.Message;
import borderwright.engine.survey.checks.PossibleMeasures.Possible;
import borderwright.engine.survey.checks.SuspectFinder.Hypothesis;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The one measure that would best tell apart which of several readings is wrong.
 *
 * <p>Each possible measure is predicted once for each suspect, from the shape adjusted without that suspect. A measure is
 * worth the chance that two suspects drawn by their shares predict it clearly differently.
 */
public final class SeparatingMeasure {
    /** Two predicted values this many standard deviations apart are reported to a person as different. */
    private static final double DIFFERENT = 2;

    /** Values that are reported, the likeliest suspects first. */
    private static final int MOST_OUTCOMES = 3;
    /** What ease counts against worth: only between measures worth about the same. */
    private static final double EASE = 0.02;
    /** A measure worth less than this tells nothing apart. */
    private static final double WORTHLESS = 0.02;

    private final PossibleMeasures possible;
    private final Adjustment adjustment;
    private final List<Hypothesis> hypotheses;
    private final List<Double> shares;
    private final List<Integer> numbers;

    /**
     * Prepares the search.
     *
     * @param hypotheses the suspects, likeliest first
     * @param numbers the number of each in the report's list of readings, from 1
     */
    public SeparatingMeasure(
            FieldBook book, Adjustment adjustment, List<Hypothesis> hypotheses, List<Integer> numbers) {
        this.possible = new PossibleMeasures(book, adjustment);
        this.adjustment = adjustment;
        this.hypotheses = hypotheses;
        this.shares = SuspectFinder.shares(hypotheses);
        this.numbers = List.copyOf(numbers);
    }

    /**
     * The measure to take.
     *
     * @param measure what to do
     * @param outcomes the same, with what it would read if which readings are wrong
     */
    public record Separating(Message measure, Message outcomes) {}

    public Separating best() {
        List<Possible> all = new ArrayList<>();
        boolean heights = hypotheses.stream().anyMatch(h -> h.entry().kind() == FieldBook.Kind.HEIGHT);
        all.addAll(heights ? possible.rises() : possible.tapes());
        all.addAll(heights ? possible.tapes() : possible.angles());
        Possible best = null;
        double most = WORTHLESS;
        for (Possible measure : all) {
            double worth = worth(measure) + EASE * measure.ease();
            if (worth > most) {
                most = worth;
                best = measure;
            }
        }
        return best == null ? again() : separating(best);
    }

    /** Nothing new tells them apart: the leading suspect has to be taken again. */
    private Separating again() {
        Message once =
                NextMeasureMessage.NEXT_ONCE_MORE.of(hypotheses.get(0).entry().name());
        return new Separating(once, DisagreementMessage.SEPARATES_BY_REPEATING.of(once));
    }

    private double worth(Possible measure) {
        double[] predicted = new double[hypotheses.size()];
        for (int i = 0; i < predicted.length; i++) {
            predicted[i] = predicted(measure, i);
        }
        double sd = sd(measure);
        double worth = 0;
        double most = 0;
        for (int i = 0; i < predicted.length; i++) {
            for (int j = 0; j < i; j++) {
                double pair = shares.get(i) * shares.get(j);
                double apart = difference(measure, predicted[i], predicted[j]) / sd;
                worth += pair * (1 - StrictMath.exp(-apart * apart / 8));
                most += pair;
            }
        }
        return most > 0 ? worth / most : 0;
    }

    private double predicted(Possible measure, int hypothesis) {
        return measure.observation()
                .computed(hypotheses.get(hypothesis).without().positions());
    }

    private static double difference(Possible measure, double one, double other) {
        return isAngle(measure) ? Observation.wrapped(one - other) : one - other;
    }

    private static boolean isAngle(Possible measure) {
        return measure.observation() instanceof Observation.Turn;
    }

    private double sd(Possible measure) {
        Observation observation = measure.observation();
        return Math.sqrt(observation.sd() * observation.sd() + adjustment.variance(observation));
    }

    private Separating separating(Possible measure) {
        List<List<Integer>> groups = groups(measure);
        if (groups.size() < 2) {
            return again();
        }
        Message first = outcome(measure, groups.get(0));
        Message second = outcome(measure, groups.get(1));
        return new Separating(
                measure.name(),
                groups.size() == 2
                        ? DisagreementMessage.SEPARATES_IN_TWO.of(measure.name(), first, second)
                        : DisagreementMessage.SEPARATES_IN_THREE.of(
                                measure.name(), first, second, outcome(measure, groups.get(2))));
    }

    /** Suspects that predict about the same value, the group with the likeliest first; at most as many as are reported. */
    private List<List<Integer>> groups(Possible measure) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < hypotheses.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> predicted(measure, i)));
        List<List<Integer>> groups = new ArrayList<>();
        for (int i : order) {
            List<Integer> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            boolean same = !last.isEmpty()
                    && Math.abs(difference(measure, predicted(measure, i), predicted(measure, last.get(0))))
                            < DIFFERENT * measure.observation().sd();
            if (!same) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(i);
        }
        groups.sort(
                Comparator.comparingInt(g -> g.stream().min(Integer::compare).orElseThrow()));
        return groups.subList(0, Math.min(groups.size(), MOST_OUTCOMES));
    }

    private Message outcome(Possible measure, List<Integer> group) {
        double value = predicted(measure, group.get(0));
        List<Object> readings = ranges(group.stream().map(numbers::get).sorted().toList());
        if (!isAngle(measure)) {
            return DisagreementMessage.OUTCOME_OF_LENGTH.of(value, group.size(), readings);
        }
        double degrees = StrictMath.toDegrees(value);
        return DisagreementMessage.OUTCOME_OF_ANGLE.of(degrees < 0 ? degrees + 360 : degrees, group.size(), readings);
    }

    /** Rising numbers, three and more in turn drawn together: 1 to 5, 7 and 8. */
    private static List<Object> ranges(List<Integer> numbers) {
        List<Object> ranges = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < numbers.size(); i++) {
            boolean goesOn = i + 1 < numbers.size() && numbers.get(i + 1) == numbers.get(i) + 1;
            if (goesOn) {
                continue;
            }
            if (i - first < 2) {
                ranges.addAll(numbers.subList(first, i + 1));
            } else {
                ranges.add(DisagreementMessage.OUTCOME_RANGE.of(numbers.get(first), numbers.get(i)));
            }
            first = i + 1;
        }
        return ranges;
    }
}
