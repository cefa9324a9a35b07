package borderwright.engine.survey;

import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Finds the shape that fits the observations best, out of all those that go round as they should.
 *
 * <p>Sketches are refined by least squares and ranked by the weighted sum of squares; where even the best does not agree
 * with its readings, by the sum that is left once the worst single reading is set aside, so that one gross slip does not
 * make a mirror image win.
 */
final class ShapeFinder {
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
    static final double EQUALLY_WELL = 9;

    private final Network network;
    private final GoingRound order;
    private final StartPositions starts;
    private final List<Shape> shapes = new ArrayList<>();
    private boolean anyShape;
    private Optional<Adjustment> wrongWayRound = Optional.empty();

    /** A bend of a smaller sine is taken for straight. */
    static final double STRAIGHT = 0.02;

    /** A refined shape. */
    record Shape(Adjustment adjustment, double sum, double sumLessWorst) {}

    ShapeFinder(Network network, GoingRound order) {
        this.network = network;
        this.order = order;
        this.starts = new StartPositions(network, order);
    }

    /** Shapes that go round as they should, best first; at most one of each. */
    List<Shape> find() {
        if (network.points() == 0) {
            return List.of();
        }
        for (Sketch seed : starts.seeds(SEEDS)) {
            refine(starts.grow(seed));
            if (!shapes.isEmpty() && agrees(shapes.get(0))) {
                return shapes;
            }
        }
        if (shapes.isEmpty()) {
            scatter();
        }
        return shapes;
    }

    /** A shape that fits the readings but not the going-round order; only of use when {@link #find} gives none. */
    Optional<Adjustment> wrongWayRound() {
        return anyShape ? wrongWayRound : Optional.empty();
    }

    private void refine(List<Sketch> sketches) {
        double best = sketches.get(0).cost();
        int refined = 0;
        boolean someFit = sketches.stream().anyMatch(s -> order.fits(s.at()));
        for (Sketch sketch : sketches) {
            boolean whole = isWhole(sketch);
            if (!whole || refined >= REFINED_PER_SEED || sketch.cost() > best + WORTH_REFINING) {
                continue;
            }
            if (someFit && !order.fits(sketch.at())) {
                continue;
            }
            refined++;
            refine(sketch.at());
        }
        rank();
    }

    private boolean isWhole(Sketch sketch) {
        for (int p = 0; p < network.points(); p++) {
            if (network.inPlan(p) && !sketch.placed()[p]) {
                return false;
            }
        }
        return true;
    }

    private void refine(Positions start) {
        Optional<Adjustment> adjusted = Turning.settled(network, start);
        if (adjusted.isEmpty()) {
            return;
        }
        Adjustment shape = adjusted.get();
        anyShape = true;
        if (!order.fits(shape.positions())) {
            if (wrongWayRound.isEmpty()) {
                wrongWayRound = adjusted;
            }
            return;
        }
        if (shapes.stream().noneMatch(s -> same(s.adjustment.positions(), shape.positions()))) {
            double sum = shape.weightedSquares();
            shapes.add(new Shape(shape, sum, sum - worst(shape)));
        }
    }

    private static double worst(Adjustment shape) {
        double most = 0;
        for (int i = 0; i < shape.network().observations().size(); i++) {
            most = Math.max(most, shape.normalised(i) * shape.normalised(i));
        }
        return most;
    }

    /** The same shape, wherever it lies: judged by the distances from two of its points and the side of the others. */
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
        return order.closed() || sameBends(one, other);
    }

    /** A line and its mirror image have the same distances; they bend the other way. */
    private boolean sameBends(Positions one, Positions other) {
        List<Integer> line = order.corners();
        for (int i = 1; i + 1 < line.size(); i++) {
            Observation bend = new Observation.Turn(line.get(i), line.get(i - 1), line.get(i + 1), 0, 1);
            double turned = bend.computed(one);
            if (turned * bend.computed(other) < 0 && Math.abs(StrictMath.sin(turned)) > STRAIGHT) {
                return false;
            }
        }
        return true;
    }

    private void rank() {
        Comparator<Shape> bySum = Comparator.comparingDouble(Shape::sum);
        shapes.sort(bySum);
        if (!shapes.isEmpty() && !agrees(shapes.get(0))) {
            shapes.sort(Comparator.<Shape>comparingDouble(s -> Math.floor(s.sumLessWorst / EQUALLY_WELL))
                    .thenComparing(bySum));
        }
    }

    boolean agrees(Shape shape) {
        int freedom = shape.adjustment.degreesOfFreedom();
        return freedom <= 0
                || shape.sum <= new ChiSquaredDistribution(freedom).inverseCumulativeProbability(1 - SEARCH_RISK);
    }

    /** Corners evenly round a circle, then ever more shaken; the rest within. */
    private void scatter() {
        SplittableRandom random = new SplittableRandom(SEED);
        int n = Math.max(order.corners().size(), 1);
        double radius = starts.typicalLength() * Math.max(n, 3) / (2 * StrictMath.PI);
        for (int run = 0; run < SCATTERED_STARTS; run++) {
            Positions start = network.given();
            for (int p = 0; p < network.points(); p++) {
                if (!network.inPlan(p) || network.hasGivenPlace(p)) {
                    continue;
                }
                int index = order.corners().indexOf(p);
                double angle = 2 * StrictMath.PI * Math.max(index, 0) / n;
                double reach = index < 0 ? 0 : radius;
                double shake = radius * (0.02 + run / (double) SCATTERED_STARTS);
                start.place(
                        p,
                        new Point(
                                reach * StrictMath.cos(angle) + shake * (2 * random.nextDouble() - 1),
                                reach * StrictMath.sin(angle) + shake * (2 * random.nextDouble() - 1)));
            }
            refine(start);
            rank();
            if (!shapes.isEmpty() && agrees(shapes.get(0)) && run >= SCATTERED_STARTS / 4) {
                return;
            }
        }
    }
}
