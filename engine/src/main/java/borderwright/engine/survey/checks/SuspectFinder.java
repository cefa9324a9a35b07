package borderwright.engine.survey.checks;

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
 * Finds the reading that may be wrong, one at a time, and accuses only when the others leave no second choice.
 *
 * <p>An alarm is raised by the sum of squares of all readings, or by one normalised residual so large that chance gives
 * it rarely among so many (Baarda 1968, with Sidak's share of the risk). Then the network is adjusted without each of the
 * leading readings in turn: by how much less the sum is that remains is twice the logarithm of how much better "this one
 * is wrong" explains the readings (to first order the sum falls by the square of the normalised residual; a gross slip
 * bends the shape beyond first order, hence the new adjustments). With readings equally likely to be wrong a priori,
 * each gets a share; one that holds nearly all of it is named, otherwise all that hold some are listed.
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
    /** Below this redundancy number a reading's error hardly shows, and what the rest implies is loose. */
    private static final double SHOWS = 0.001;

    private final FieldBook book;
    private final Network network;
    private final ShapeFinder.Shape shape;
    private final double risk;

    public SuspectFinder(FieldBook book, ShapeFinder.Shape shape, double risk) {
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
     */
    public record Hypothesis(FieldBook.Entry entry, Adjustment without, double sum) {
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
        return hypotheses.stream()
                .filter(h -> likelihood(h, hypotheses.get(0)) >= LISTED)
                .toList();
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
        return Stream.of(shape.all(), shape.rest())
                .flatMap(Optional::stream)
                .map(a -> GaugeTurning.settled(rest, a.positions()))
                .flatMap(Optional::stream)
                .filter(a -> book.order().fits(a.positions()))
                .map(a -> new Hypothesis(entry, a, a.weightedSquares()))
                .filter(h -> isChecked(h))
                .min(Comparator.comparingDouble(Hypothesis::sum));
    }

    private boolean isChecked(Hypothesis hypothesis) {
        Observation observation = hypothesis.observation(network);
        double own = observation.sd() * observation.sd();
        return own / (own + hypothesis.without.variance(observation)) > SHOWS;
    }

    private static double likelihood(Hypothesis hypothesis, Hypothesis best) {
        return StrictMath.exp((best.sum - hypothesis.sum) / 2);
    }

    /** Each hypothesis' share of the whole, in the same order. */
    static List<Double> shares(List<Hypothesis> hypotheses) {
        Hypothesis best = hypotheses.get(0);
        double sum = hypotheses.stream().mapToDouble(h -> likelihood(h, best)).sum();
        return hypotheses.stream().map(h -> likelihood(h, best) / sum).toList();
    }

    /** Whether one reading stands out so far that it can be named, and the others agree once it is set aside. */
    public static boolean isNamed(List<Hypothesis> hypotheses) {
        return !hypotheses.isEmpty()
                && ShapeFinder.agrees(hypotheses.get(0).without)
                && shares(hypotheses).get(0) >= NAMED;
    }
}
