package borderwright.engine.survey.checks;

import borderwright.engine.survey.checks.PossibleMeasures.Possible;
import borderwright.engine.survey.checks.SuspectFinder.Hypothesis;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.network.SurveyWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The one measure that would best tell apart which of several readings is wrong.
 *
 * <p>Each possible measure is foretold once for each suspect, from the shape adjusted without that suspect. A measure is
 * worth the chance that two suspects drawn by their shares foretell it clearly differently.
 */
public final class SeparatingMeasure {
    /** Two foretold values this many standard deviations apart are taken for different when told to a person. */
    private static final double DIFFERENT = 2;

    private static final int NAMES = 3;
    private static final int GROUPS = 3;
    /** What ease counts against worth: only between measures worth about the same. */
    private static final double EASE = 0.02;
    /** A measure worth less than this tells nothing apart. */
    private static final double WORTHLESS = 0.02;

    private final PossibleMeasures possible;
    private final Adjustment adjustment;
    private final SurveyWords words;
    private final List<Hypothesis> hypotheses;
    private final List<Double> shares;

    public SeparatingMeasure(FieldBook book, Adjustment adjustment, SurveyWords words, List<Hypothesis> hypotheses) {
        this.possible = new PossibleMeasures(book, adjustment);
        this.adjustment = adjustment;
        this.words = words;
        this.hypotheses = hypotheses;
        this.shares = SuspectFinder.shares(hypotheses);
    }

    /** A measure with what it would read for whom. */
    public record Separating(String what, String readings) {}

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
        return best == null ? again() : new Separating(best.what(), readings(best));
    }

    /** Nothing new tells them apart: the leading suspect has to be taken again. */
    private Separating again() {
        String what = hypotheses.get(0).entry().what();
        return new Separating(what + " once more", "the same value clears it");
    }

    private double worth(Possible measure) {
        double[] foretold = new double[hypotheses.size()];
        for (int i = 0; i < foretold.length; i++) {
            foretold[i] = foretold(measure, i);
        }
        double sd = sd(measure);
        double worth = 0;
        double most = 0;
        for (int i = 0; i < foretold.length; i++) {
            for (int j = 0; j < i; j++) {
                double pair = shares.get(i) * shares.get(j);
                double apart = difference(measure, foretold[i], foretold[j]) / sd;
                worth += pair * (1 - StrictMath.exp(-apart * apart / 8));
                most += pair;
            }
        }
        return most > 0 ? worth / most : 0;
    }

    private double foretold(Possible measure, int hypothesis) {
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

    private String readings(Possible measure) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < hypotheses.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> foretold(measure, i)));
        List<List<Integer>> groups = new ArrayList<>();
        for (int i : order) {
            List<Integer> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            boolean same = !last.isEmpty()
                    && Math.abs(difference(measure, foretold(measure, i), foretold(measure, last.get(0))))
                            < DIFFERENT * measure.observation().sd();
            if (!same) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(i);
        }
        groups.sort(
                Comparator.comparingInt(g -> g.stream().min(Integer::compare).orElseThrow()));
        List<String> parts = new ArrayList<>();
        for (List<Integer> group : groups.subList(0, Math.min(groups.size(), GROUPS))) {
            parts.add("about " + value(measure, foretold(measure, group.get(0))) + " if " + suspects(group)
                    + " is wrong");
        }
        return String.join(", ", parts);
    }

    private String value(Possible measure, double foretold) {
        if (!isAngle(measure)) {
            return words.length(foretold);
        }
        double degrees = StrictMath.toDegrees(foretold);
        return SurveyWords.decimal(degrees < 0 ? degrees + 360 : degrees, 1) + " deg";
    }

    private String suspects(List<Integer> group) {
        List<String> names = group.stream()
                .sorted()
                .map(i -> hypotheses.get(i).entry().what())
                .limit(NAMES)
                .toList();
        int more = group.size() - names.size();
        if (more == 0) {
            return String.join(" or ", names);
        }
        return String.join(", ", names) + " or " + (more == 1 ? "another" : "one of " + more + " others");
    }
}
