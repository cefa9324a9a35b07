package borderwright.engine.survey.checks;

import borderwright.engine.effort.WorkListener;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.GaugeTurning;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.shape.ShapeFinder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Finds the reading that may be wrong, and accuses only when the others leave no second choice.
 *
 * <p>An alarm is raised by the sum of squares of all readings, or by one normalised residual so large that chance gives
 * it rarely among so many (Baarda 1968, with Sidak's share of the risk). Then the network is adjusted without each of the
 * leading readings in turn: by how much less the sum is that remains is twice the logarithm of how much better "this one
 * is wrong" explains the readings (to first order the sum falls by the square of the normalised residual; a gross slip
 * bends the shape beyond first order, hence the new adjustments). With readings equally likely to be wrong a priori,
 * each gets a share; one that holds nearly all of it is named, otherwise all that hold some are listed.
 *
 * <p>Where the alarm goes on without any one reading, two slips are sought together: the leading readings are left out two by
 * two, and a reading's share is that of all pairs that it is in.
 *
 * <p>See docs/decisions/0011.
 */
public final class SuspectFinder {
    /** Share of the risk spent on single residuals, so that both alarms together stay near the risk. */
    private static final double SINGLE_SHARE = 0.2;
    /** A reading is named when it holds this share, and listed when it holds {@link #LISTED} of the leader's share. */
    private static final double NAMED = 0.9;

    private static final double LISTED = 0.01;
    /** Readings that are adjusted afresh without. */
    private static final int MOST_REFITS = 16;
    /** Readings that are left out two by two. */
    private static final int MOST_IN_PAIRS = 10;
    /** Below this redundancy number a reading's error hardly shows, and what the rest implies is loose. */
    private static final double SHOWS = 0.001;

    private final FieldBook book;
    private final Network network;
    private final ShapeFinder.Shape shape;
    private final double risk;
    private final WorkListener listener;
    private int leftOut;

    /** @param listener hears each time that readings are left out */
    public SuspectFinder(FieldBook book, ShapeFinder.Shape shape, double risk, WorkListener listener) {
        this.listener = listener;
        this.book = book;
        this.network = book.network();
        this.shape = shape;
        this.risk = risk;
    }

    /**
     * That one reading is wrong.
     *
     * @param entry the reading
     * @param without the network adjusted without it
     * @param sum weighted sum of squares that is left then
     * @param share of the blame, 0 to 1; two that are wrong together may have all of it each
     */
    public record Hypothesis(FieldBook.Entry entry, Adjustment without, double sum, double share) {
        private Hypothesis withShare(double set) {
            return new Hypothesis(entry, without, sum, set);
        }

        /** The observation as it stands at the places found without it. */
        public Observation observation(Network network) {
            return network.observations().get(entry.observation()).sidedAs(without.positions());
        }

        /** The places found without it, with it set aside. */
        public Adjustment setAside(Network network) {
            return without.settingAside(entry.observation(), observation(network));
        }
    }

    /** Readings that may be wrong, worst first; none when all agree. */
    public List<Hypothesis> find() {
        if (!alarm()) {
            return List.of();
        }
        Set<Integer> leading = new LinkedHashSet<>();
        shape.all().ifPresent(all -> leading.addAll(byResidual(all)));
        shape.rest()
                .ifPresent(rest -> leading.addAll(ShapeFinder.mostBroken(network, rest.positions(), 0, MOST_REFITS)));
        List<Hypothesis> hypotheses = new ArrayList<>();
        for (FieldBook.Entry entry : book.entries()) {
            if (entry.observation() >= 0 && leading.contains(entry.observation())) {
                without(entry).ifPresent(hypotheses::add);
            }
        }
        // sums equal but for rounding keep the order of the document
        hypotheses.sort(Comparator.comparingLong(h -> StrictMath.round(h.sum * 1e4)));
        if (hypotheses.isEmpty()) {
            return List.of();
        }
        List<Hypothesis> together = together(hypotheses);
        return together.isEmpty() ? alone(hypotheses) : together;
    }

    /** Those that one wrong reading explains, with their shares. */
    private static List<Hypothesis> alone(List<Hypothesis> hypotheses) {
        double least = hypotheses.get(0).sum;
        List<Hypothesis> listed = hypotheses.stream()
                .filter(h -> likelihood(h.sum, least) >= LISTED)
                .toList();
        double all = listed.stream().mapToDouble(h -> likelihood(h.sum, least)).sum();
        return listed.stream()
                .map(h -> h.withShare(likelihood(h.sum, least) / all))
                .toList();
    }

    /** Those that two wrong readings explain, where one does not; none where two do not either. */
    private List<Hypothesis> together(List<Hypothesis> alone) {
        int freedom = alone.get(0).without.degreesOfFreedom();
        if (freedom < 2 || alone.get(0).sum <= limit(freedom, risk)) {
            return List.of();
        }
        List<Hypothesis> leading = alone.subList(0, Math.min(alone.size(), MOST_IN_PAIRS));
        double[][] sums = new double[leading.size()][leading.size()];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < leading.size(); i++) {
            for (int j = 0; j < i; j++) {
                sums[i][j] = sumWithout(leading.get(i), leading.get(j));
                least = Math.min(least, sums[i][j]);
            }
        }
        if (least > limit(freedom - 1, risk)) {
            return List.of();
        }
        return shared(leading, sums, least);
    }

    private static List<Hypothesis> shared(List<Hypothesis> leading, double[][] sums, double least) {
        double[] shares = new double[leading.size()];
        double all = 0;
        for (int i = 0; i < leading.size(); i++) {
            for (int j = 0; j < i; j++) {
                double likely = likelihood(sums[i][j], least);
                shares[i] += likely;
                shares[j] += likely;
                all += likely;
            }
        }
        List<Hypothesis> blamed = new ArrayList<>();
        for (int i = 0; i < leading.size(); i++) {
            if (shares[i] / all >= LISTED) {
                blamed.add(leading.get(i).withShare(shares[i] / all));
            }
        }
        blamed.sort(Comparator.comparingLong(h -> -StrictMath.round(h.share * 1e4)));
        return blamed;
    }

    /** What is left without two readings; infinite where the rest does not hold. */
    private double sumWithout(Hypothesis one, Hypothesis other) {
        int first = Math.max(one.entry.observation(), other.entry.observation());
        int second = Math.min(one.entry.observation(), other.entry.observation());
        Network rest = network.without(first).without(second);
        return settled(rest, Stream.of(one.without, other.without))
                .mapToDouble(Adjustment::weightedSquares)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static List<Integer> byResidual(Adjustment all) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < all.network().observations().size(); i++) {
            if (all.redundancyNumber(i) > SHOWS) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingLong(i -> -StrictMath.round(Math.abs(all.normalised(i)) * 1e4)));
        return order.subList(0, Math.min(order.size(), MOST_REFITS));
    }

    private boolean alarm() {
        if (network.degreesOfFreedom() <= 0) {
            return false;
        }
        if (shape.all().isEmpty()) {
            return true;
        }
        Adjustment all = shape.all().get();
        if (all.weightedSquares() > limit(all.degreesOfFreedom(), risk)) {
            return true;
        }
        int checked = 0;
        double most = 0;
        for (int i = 0; i < network.observations().size(); i++) {
            checked += all.redundancyNumber(i) > 0 ? 1 : 0;
            most = Math.max(most, Math.abs(all.normalised(i)));
        }
        double each = 1 - StrictMath.pow(1 - SINGLE_SHARE * risk, 1.0 / Math.max(checked, 1));
        return most > new NormalDistribution().inverseCumulativeProbability(1 - each / 2);
    }

    /** Limit of the weighted sum of squares at a risk. */
    public static double limit(int degreesOfFreedom, double risk) {
        return new ChiSquaredDistribution(degreesOfFreedom).inverseCumulativeProbability(1 - risk);
    }

    /** The network without one reading; empty when it then goes round the wrong way or does not hold. */
    private Optional<Hypothesis> without(FieldBook.Entry entry) {
        Network rest = network.without(entry.observation());
        return settled(rest, Stream.of(shape.all(), shape.rest()).flatMap(Optional::stream))
                .map(a -> new Hypothesis(entry, a, a.weightedSquares(), 0))
                .filter(h -> isChecked(h))
                .min(Comparator.comparingDouble(Hypothesis::sum));
    }

    /** A network adjusted from some starts, as far as it settles and its corners go round the right way. */
    private Stream<Adjustment> settled(Network rest, Stream<Adjustment> starts) {
        listener.begins(SlipMessage.LEAVING_OUT.of(++leftOut));
        return starts.map(start -> GaugeTurning.settled(rest, start.positions()))
                .flatMap(Optional::stream)
                .filter(found -> book.order().fits(found.positions()));
    }

    private boolean isChecked(Hypothesis hypothesis) {
        Observation observation = hypothesis.observation(network);
        double own = observation.sd() * observation.sd();
        return own / (own + hypothesis.without.variance(observation)) > SHOWS;
    }

    private static double likelihood(double sum, double least) {
        return StrictMath.exp((least - sum) / 2);
    }

    /** Each hypothesis' share of the whole, in the same order; they add up to 1. */
    static List<Double> shares(List<Hypothesis> hypotheses) {
        double all = hypotheses.stream().mapToDouble(Hypothesis::share).sum();
        return hypotheses.stream().map(h -> h.share / all).toList();
    }

    /** Whether one reading stands out so far that it can be named, and the others agree once it is set aside. */
    public static boolean isNamed(List<Hypothesis> hypotheses) {
        return !hypotheses.isEmpty()
                && ShapeFinder.agrees(hypotheses.get(0).without)
                && hypotheses.get(0).share >= NAMED;
    }
}
