package borderwright.engine.survey.checks;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.ErrorEllipse;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.NetworkRigidity;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.network.Positions;
import borderwright.engine.survey.shape.ShapeFinder;
import borderwright.engine.survey.shape.ShapeFinder.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why the measures do not fix the border, each time with the measure that would. */
public final class SurveyRefusals {
    /** Two shapes are told apart by a tape when it reads this differently, mm and standard deviations. */
    private static final double TOLD_APART_MM = 30;

    private static final double TOLD_APART_SD = 5;

    private final FieldBook book;

    public SurveyRefusals(FieldBook book) {
        this.book = book;
    }

    /** Points that the measures leave free to move, whatever they read. */
    public List<Problem> notHeld() {
        Network network = book.network();
        boolean anyLength = network.observations().stream()
                .anyMatch(o -> !(o instanceof Observation.Gauge)
                        && !(o instanceof Observation.Turn)
                        && !(o instanceof Observation.HeightDifference));
        List<Problem> problems = new ArrayList<>();
        if (book.entries().isEmpty()) {
            int lengths = Math.max(2 * network.points() - 3, 1);
            problems.add(inTheMeasures(RefusalMessage.NOTHING_MEASURED.of(network.points(), lengths)));
            return problems;
        }
        for (NetworkRigidity.Missing missing : NetworkRigidity.missing(network, book.order())) {
            problems.add(notHeld(missing, anyLength));
        }
        return problems;
    }

    private static Problem inTheMeasures(Message message) {
        return new Problem("survey.measures", message);
    }

    private Problem notHeld(NetworkRigidity.Missing missing, boolean anyLength) {
        boolean allCorners = book.edges().ring().containsAll(missing.points());
        List<Message> tapes = missing.lengths().stream()
                .map(line -> RefusalMessage.TAPE_BETWEEN.of(line.from(), line.to()))
                .toList();
        RefusalMessage code = anyLength ? RefusalMessage.NOT_FIXED : RefusalMessage.NOT_FIXED_IN_SIZE;
        int number = missing.points().size();
        return inTheMeasures(code.of(allCorners ? "corner" : "point", missing.points(), number, tapes));
    }

    /** No shape goes round as the corners are named. */
    public Problem noShape(Optional<Adjustment> wrongWayRound) {
        if (wrongWayRound.isEmpty()) {
            return inTheMeasures(RefusalMessage.NO_SHAPE.of());
        }
        Optional<CornerOrder.Crossing> crossing =
                book.order().firstCrossing(wrongWayRound.get().positions());
        return crossing.map(edges -> new Problem(
                        "survey.corners", RefusalMessage.EDGES_CROSS.of(edge(edges.one()), edge(edges.other()))))
                .orElseGet(() -> new Problem("survey.going round", RefusalMessage.GOES_ROUND_THE_OTHER_WAY.of()));
    }

    private String edge(int edge) {
        CornerOrder order = book.order();
        Network network = book.network();
        return network.name(order.from(edge)) + "-" + network.name(order.to(edge));
    }

    /** Two shapes that fit equally well: a mirror case that the going-round order does not settle. */
    public Optional<Problem> twoShapes(List<Shape> shapes) {
        Shape best = shapes.get(0);
        for (Shape other : shapes.subList(1, shapes.size())) {
            if (best.agrees() && other.agrees() && other.sum() < best.sum() + ShapeFinder.EQUALLY_WELL) {
                Optional<Problem> two = twoShapes(best.best(), other.best());
                if (two.isPresent()) {
                    return two;
                }
            }
        }
        return Optional.empty();
    }

    /** The two shapes are told apart by the tape that differs most between them; none differs when they are the same. */
    private Optional<Problem> twoShapes(Adjustment one, Adjustment other) {
        Network network = book.network();
        double most = 0;
        Optional<Problem> problem = Optional.empty();
        for (int a = 0; a < network.points(); a++) {
            for (int b = a + 1; b < network.points(); b++) {
                if (!network.inPlan(a) || !network.inPlan(b)) {
                    continue;
                }
                double first = one.positions().at(a).distanceMm(one.positions().at(b));
                double second =
                        other.positions().at(a).distanceMm(other.positions().at(b));
                double sd = Math.sqrt(one.variance(new Observation.Distance(a, b, first, 1)));
                double apart = Math.abs(first - second);
                if (apart > most && apart > TOLD_APART_MM + TOLD_APART_SD * sd) {
                    most = apart;
                    problem = Optional.of(inTheMeasures(
                            RefusalMessage.TWO_SHAPES.of(network.name(a), network.name(b), first, second)));
                }
            }
        }
        return problem.or(() -> mirrored(one, other));
    }

    /** A strip's line has the same lengths as its mirror image. */
    private Optional<Problem> mirrored(Adjustment one, Adjustment other) {
        if (!book.notes().isStrip() || book.order().corners().size() < 3) {
            return Optional.empty();
        }
        return book.order().otherBends(one.positions(), other.positions()).stream()
                .findFirst()
                .map(book.network()::name)
                .map(corner -> inTheMeasures(RefusalMessage.TWO_SHAPES_BY_A_BEND.of(corner)));
    }

    /** Corners held so loosely that a first-order uncertainty is as large as a share of the border. */
    public List<Problem> weak(Adjustment adjustment, double share) {
        List<Problem> weak = new ArrayList<>();
        Positions at = adjustment.positions();
        List<Integer> corners = book.order().corners();
        double extent = 0;
        for (int a : corners) {
            for (int b : corners) {
                extent = Math.max(extent, at.at(a).distanceMm(at.at(b)));
            }
        }
        int worst = -1;
        double most = share * extent;
        for (int corner : corners) {
            ErrorEllipse ellipse = adjustment.ellipse(corner);
            if (!(ellipse.majorMm() <= most)) {
                worst = corner;
                most = ellipse.majorMm();
            }
        }
        if (worst >= 0) {
            weak.addAll(new TapeTriangles(book).thatDoNotClose());
        }
        if (worst >= 0 && weak.isEmpty()) {
            double movementMm = most;
            String corner = book.network().name(worst);
            boolean far = !(movementMm < extent);
            weak.add(inTheMeasures(HoldingTape.best(book, adjustment)
                    .map(tape -> far
                            ? RefusalMessage.WEAKLY_FIXED_BY_FAR.of(corner, tape.from(), tape.to(), tape.heldMm())
                            : RefusalMessage.WEAKLY_FIXED.of(corner, movementMm, tape.from(), tape.to(), tape.heldMm()))
                    .orElseGet(() -> RefusalMessage.WEAKLY_FIXED_WITHOUT_TAPE.of(corner))));
        }
        return weak;
    }
}
