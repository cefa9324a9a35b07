package borderwright.engine.survey.shape;

import borderwright.engine.effort.WorkListener;
import borderwright.engine.geometry.Point;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.GaugeTurning;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Finds the shape that fits the observations best, out of all those that go round as they should.
 *
 * <p>Sketches are refined by least squares and ranked by the weighted sum of squares. Where a shape does not agree with
 * its readings, a gross slip may have bent it out of all likeness; so it is also adjusted without the readings that the
 * sketch breaks most, one at a time, and ranked by what is left then. So no mirror image wins by hiding a slip.
 */
public final class ShapeFinder {
    private static final int SEEDS = 3;
    private static final int REFINED_PER_SEED = 8;
    /** A sketch that breaks this much more than the best one is not worth refining (tolerances, see StartPositions). */
    private static final double WORTH_REFINING = 45;
    /** Starts from an even polygon, for networks that cannot be built point by point. */
    private static final int SCATTERED_STARTS = 40;

    private static final long SEED = 20_240_607;
    /** Risk at which a shape counts as agreeing well enough to end the search. */
    private static final double SEARCH_RISK = 0.001;
    /** Two shapes whose sums differ by less fit about equally well (a likelihood ratio of 90). */
    public static final double EQUALLY_WELL = 9;

    /** Readings left out in turn from a shape that does not agree, to see whether one slip explains it. */
    private static final int LEFT_OUT = 4;

    private final Network network;
    private final CornerOrder order;
    private final StartPositions starts;
    private final List<Shape> shapes = new ArrayList<>();
    private final WorkListener listener;
    private Optional<Adjustment> wrongWayRound = Optional.empty();
    private int settled;

    /**
     * A shape that goes round as it should.
     *
     * @param all adjusted to all readings; empty when a slip bends that so far that it no longer goes round
     * @param rest adjusted to all readings but the one that it breaks most; empty when all agree
     * @param sum weighted sum of squares of {@code all}, infinite when that is empty
     * @param restSum of {@code rest}, or of {@code all} when that agrees
     */
    public record Shape(Optional<Adjustment> all, Optional<Adjustment> rest, double sum, double restSum) {
        public Adjustment best() {
            return all.or(() -> rest).orElseThrow();
        }

        /** Whether its readings agree, or would without one of them. */
        boolean isExplained() {
            return agrees() || rest.filter(ShapeFinder::agrees).isPresent();
        }

        public boolean agrees() {
            return all.isPresent() && ShapeFinder.agrees(all.get());
        }
    }

    /** @param listener hears of each shape that is settled */
    public ShapeFinder(Network network, CornerOrder order, WorkListener listener) {
        this.listener = listener;
        this.network = network;
        this.order = order;
        this.starts = new StartPositions(network, order);
    }

    /** Shapes that go round as they should, best first; at most one of each. */
    public List<Shape> find() {
        if (network.points() == 0) {
            return List.of();
        }
        for (PartialPlacement seed : starts.seeds(SEEDS)) {
            refine(starts.grow(seed));
            if (!shapes.isEmpty() && shapes.get(0).isExplained()) {
                return shapes;
            }
        }
        if (shapes.isEmpty()) {
            scatter();
        }
        return shapes;
    }

    /** A shape that fits the readings but not the going-round order; only of use when {@link #find} gives none. */
    public Optional<Adjustment> wrongWayRound() {
        return wrongWayRound;
    }

    /** Whether all readings agree on a shape that crosses itself or goes round the other way. */
    public boolean agreesTheWrongWayRound() {
        return wrongWayRound.filter(ShapeFinder::agrees).isPresent();
    }

    private void refine(List<PartialPlacement> sketches) {
        double best = sketches.get(0).cost();
        int refined = 0;
        boolean someFit = sketches.stream().anyMatch(s -> order.fits(s.at()));
        if (isWhole(sketches.get(0)) && !order.fits(sketches.get(0).at())) {
            // nobody's slip: perhaps the corners are named in the wrong order
            refine(sketches.get(0).at());
        }
        for (PartialPlacement sketch : sketches) {
            boolean worth = isWhole(sketch) && sketch.cost() <= best + WORTH_REFINING;
            if (worth && refined < REFINED_PER_SEED && (!someFit || order.fits(sketch.at()))) {
                refined++;
                refine(sketch.at());
            }
        }
        rank();
    }

    private boolean isWhole(PartialPlacement sketch) {
        for (int p = 0; p < network.points(); p++) {
            if (network.inPlan(p) && !sketch.placed()[p]) {
                return false;
            }
        }
        return true;
    }

    private void refine(Positions start) {
        Optional<Adjustment> whole = settled(network, start);
        Optional<Adjustment> all = whole.filter(a -> order.fits(a.positions()));
        double sum = all.map(Adjustment::weightedSquares).orElse(Double.POSITIVE_INFINITY);
        if (all.isPresent() && agrees(all.get())) {
            add(new Shape(all, Optional.empty(), sum, sum));
            return;
        }
        Optional<Adjustment> rest = rest(start);
        if (all.isPresent() || rest.isPresent()) {
            add(new Shape(all, rest, sum, rest.map(Adjustment::weightedSquares).orElse(sum)));
        }
        if (whole.isPresent() && all.isEmpty() && !agreesTheWrongWayRound()) {
            wrongWayRound = whole;
        }
    }

    private Optional<Adjustment> settled(Network readings, Positions start) {
        listener.begins(ShapeMessage.SETTLING_SHAPE.of(++settled, network.points()));
        return GaugeTurning.settled(readings, start);
    }

    private void add(Shape shape) {
        Positions places = shape.best().positions();
        if (shapes.stream().noneMatch(s -> same(s.best().positions(), places))) {
            shapes.add(shape);
        }
    }

    /** Adjusted without the one reading whose leaving out helps most, among those that the sketch breaks most. */
    private Optional<Adjustment> rest(Positions sketch) {
        if (network.degreesOfFreedom() < 1) {
            return Optional.empty();
        }
        Optional<Adjustment> best = Optional.empty();
        for (int i : mostBroken(network, sketch, 1e-3 * starts.typicalLength(), LEFT_OUT)) {
            Optional<Adjustment> rest = settled(network.without(i), sketch).filter(a -> order.fits(a.positions()));
            if (rest.isPresent()
                    && (best.isEmpty()
                            || rest.get().weightedSquares() < best.get().weightedSquares())) {
                best = rest;
            }
        }
        return best;
    }

    /** Observations that places break most, worst first, counted in standard deviations widened by a slack. */
    public static List<Integer> mostBroken(Network network, Positions at, double slack, int most) {
        List<Integer> numbers = new ArrayList<>();
        List<Double> broken = new ArrayList<>();
        for (int i = 0; i < network.observations().size(); i++) {
            Observation observation = network.observations().get(i).sidedAs(at);
            double lever = observation.lengthPerUnit(at);
            numbers.add(i);
            broken.add(Math.abs(observation.misclosure(at)) * lever / (observation.sd() * lever + slack));
        }
        numbers.sort(Comparator.comparingDouble(i -> -broken.get(i)));
        return numbers.subList(0, Math.min(most, numbers.size()));
    }

    /** The same shape, wherever it lies: judged by all distances, and for a line by its bends. */
    private boolean same(Positions one, Positions other) {
        double near = 1e-4 * starts.typicalLength();
        for (int p = 0; p < network.points(); p++) {
            for (int q = 0; network.inPlan(p) && q < p; q++) {
                if (network.inPlan(q)
                        && Math.abs(one.at(p).distanceMm(one.at(q))
                                        - other.at(p).distanceMm(other.at(q)))
                                > near) {
                    return false;
                }
            }
        }
        return order.closed() || order.sameBends(one, other);
    }

    private void rank() {
        Comparator<Shape> bySum = Comparator.comparingDouble(Shape::sum);
        shapes.sort(bySum);
        if (!shapes.isEmpty() && !shapes.get(0).agrees()) {
            shapes.sort(Comparator.<Shape>comparingDouble(s -> Math.floor(s.restSum / EQUALLY_WELL))
                    .thenComparing(bySum));
        }
    }

    /** Whether the readings of a shape agree well enough that nothing gross is left in them. */
    public static boolean agrees(Adjustment shape) {
        int freedom = shape.degreesOfFreedom();
        return freedom <= 0
                || shape.weightedSquares()
                        <= new ChiSquaredDistribution(freedom).inverseCumulativeProbability(1 - SEARCH_RISK);
    }

    /** Corners evenly round a circle, then ever more shaken; the rest within. */
    private void scatter() {
        SplittableRandom random = new SplittableRandom(SEED);
        int n = Math.max(order.corners().size(), 1);
        double radius = starts.typicalLength() * Math.max(n, 3) / (2 * StrictMath.PI);
        for (int run = 0; run < SCATTERED_STARTS; run++) {
            double shake = radius * (0.02 + run / (double) SCATTERED_STARTS);
            Positions start = network.given();
            for (int p = 0; p < network.points(); p++) {
                if (network.inPlan(p) && !network.hasGivenPlace(p)) {
                    int index = order.corners().indexOf(p);
                    double angle = 2 * StrictMath.PI * Math.max(index, 0) / n;
                    double reach = index < 0 ? 0 : radius;
                    Point even = new Point(reach * StrictMath.cos(angle), reach * StrictMath.sin(angle));
                    Point shaken = new Point(2 * random.nextDouble() - 1, 2 * random.nextDouble() - 1);
                    start.place(p, even.plus(shaken.times(shake)));
                }
            }
            refine(start);
            rank();
            if (!shapes.isEmpty() && shapes.get(0).agrees() && run >= SCATTERED_STARTS / 4) {
                return;
            }
        }
    }
}
