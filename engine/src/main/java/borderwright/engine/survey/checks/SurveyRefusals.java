package borderwright.engine.survey.checks;

import borderwright.engine.problem.Problem;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.ErrorEllipse;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.NetworkRigidity;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.network.Positions;
import borderwright.engine.survey.network.SurveyWords;
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
    private final SurveyWords words;

    public SurveyRefusals(FieldBook book, SurveyWords words) {
        this.book = book;
        this.words = words;
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
            problems.add(new Problem(
                    "nothing-measured",
                    "survey.measures",
                    "Nothing was measured.",
                    "Tape every edge, and then across from corner to corner: a border of "
                            + network.points() + " corners needs "
                            + Math.max(2 * network.points() - 3, 1) + " lengths at the least."));
            return problems;
        }
        for (NetworkRigidity.Missing missing : NetworkRigidity.missing(network, book.order())) {
            problems.add(notHeld(missing, anyLength));
        }
        return problems;
    }

    private Problem notHeld(NetworkRigidity.Missing missing, boolean anyLength) {
        boolean one = missing.points().size() == 1;
        List<String> corners = book.edges().ring();
        boolean allCorners = corners.containsAll(missing.points());
        String kind = allCorners ? (one ? "Corner " : "Corners ") : (one ? "Point " : "Points ");
        String what = anyLength
                ? kind + SurveyWords.list(missing.points()) + " can still move: the measures do not fix "
                        + (one ? "it." : "them.")
                : kind + SurveyWords.list(missing.points()) + (one ? " is" : " are")
                        + " not fixed: angles alone give a shape but no size.";
        List<String> tapes = missing.lengths().stream().map(l -> "a tape " + l).toList();
        String right = SurveyWords.list(tapes) + " would fix " + (one ? "it." : "them.");
        return new Problem("not-fixed", "survey.measures", what, "A" + right.substring(1));
    }

    /** No shape goes round as the corners are named. */
    public Problem noShape(Optional<Adjustment> wrongWayRound) {
        if (wrongWayRound.isEmpty()) {
            return new Problem(
                    "no-shape",
                    "survey.measures",
                    "No shape was found that comes near these measures.",
                    "Perhaps two points were mixed up, or a length was written in the wrong unit.");
        }
        Positions at = wrongWayRound.get().positions();
        List<Integer> crossing = book.order().firstCrossing(at);
        if (crossing.isEmpty()) {
            return new Problem(
                    "goes-round-the-other-way",
                    "survey.round",
                    "The measures make the corners go round the other way.",
                    "Perhaps the border lies on the other hand, or an offset was taken to the other side.");
        }
        return new Problem(
                "edges-cross",
                "survey.corners",
                "As the corners are named, edge " + edge(crossing.get(0)) + " crosses edge " + edge(crossing.get(1))
                        + ".",
                "Name the corners in the order in which one meets them going round the border.");
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
        String ends = "";
        String right = "";
        for (int a = 0; a < network.points(); a++) {
            for (int b = 0; b < network.points(); b++) {
                if (a >= b || !network.inPlan(a) || !network.inPlan(b)) {
                    continue;
                }
                double first = one.positions().at(a).distanceMm(one.positions().at(b));
                double second =
                        other.positions().at(a).distanceMm(other.positions().at(b));
                double sd = Math.sqrt(one.variance(new Observation.Distance(a, b, first, 1)));
                double apart = Math.abs(first - second);
                if (apart > most && apart > TOLD_APART_MM + TOLD_APART_SD * sd) {
                    most = apart;
                    ends = network.name(a) + " and " + network.name(b);
                    right = "A tape from " + network.name(a) + " to " + network.name(b) + " would settle it: "
                            + words.length(first) + " in the one, " + words.length(second) + " in the other.";
                }
            }
        }
        if (ends.isEmpty()) {
            return mirrored(one, other);
        }
        return Optional.of(new Problem(
                "two-shapes",
                "survey.measures",
                "Two shapes fit these measures, with " + ends + " nearer together or farther apart.",
                right));
    }

    /** A strip's line has the same lengths as its mirror image. */
    private Optional<Problem> mirrored(Adjustment one, Adjustment other) {
        if (book.notes().strip() == null || book.order().corners().size() < 3) {
            return Optional.empty();
        }
        return book.order().otherBends(one.positions(), other.positions()).stream()
                .findFirst()
                .map(book.network()::name)
                .map(corner -> new Problem(
                        "two-shapes",
                        "survey.measures",
                        "Two shapes fit these measures: the line may bend either way at " + corner + ".",
                        "An angle at " + corner + ", taken inside the strip, would settle it."));
    }

    /** Corners that hang so loosely that a first-order uncertainty is as large as a share of the border. */
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
        if (worst >= 0 && book.network().degreesOfFreedom() == 0) {
            weak.addAll(new TapeTriangles(book, words).thatDoNotClose());
        }
        if (worst >= 0 && weak.isEmpty()) {
            SurveyReport.NextMeasure next = new NextMeasureFinder(book, adjustment, words).forTheWorstCorner();
            weak.add(new Problem(
                    "weakly-fixed",
                    "survey.measures",
                    "Corner " + book.network().name(worst) + " hangs too loosely: its measures let it move by "
                            + (most < extent ? words.length(most) : "more than the border is long")
                            + " without disagreeing.",
                    "A " + next.what() + " " + next.why() + "."));
        }
        return weak;
    }
}
