package borderwright.engine.settingout;

import borderwright.engine.assembly.order.Diagonal;
import borderwright.engine.geometry.Point;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.SurveyedPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the peg, or on hard ground the chalk mark, goes for each corner of each box, from points that are already known on site.
 *
 * <p>Two tapes hooked at two known points fix a peg where they cross, on the side stated. The nearer the tapes cross at a
 * right angle, the less an error in one of them moves the peg: by {@code error / sin(crossing)}. So each peg takes, in this
 * order (common practice, no source):
 *
 * <ol>
 *   <li>the pair of points whose tapes cross between 45 and 135 degrees and whose longer tape is shortest;
 *   <li>a place along and square off an edge of the border whose two corners are known, where the peg is no more than
 *       1 m off it: near a fence two tapes hooked along it hardly cross;
 *   <li>the pair that crosses best, where it crosses between 30 and 150 degrees;
 *   <li>a place off the line between two known points, however far.
 * </ol>
 *
 * @param pegs one for each corner of each box, in plan order
 * @param checks distances between pegs that must come out when all are set
 * @param known how the points from which they are set out are found again
 */
public record PegList(List<Peg> pegs, List<Check> checks, KnownPoints known) {
    private static final double GOOD_CROSSING_DEG = 45;
    private static final double LEAST_CROSSING_DEG = 30;
    private static final double NEAR_EDGE_MM = 1000;
    /** How far past an edge's ends a tape laid along it is still of use. */
    private static final double PAST_END_MM = 500;
    /** A shorter tape cannot be hooked and crossed with another. */
    private static final double SHORTEST_TAPE_MM = 50;

    public PegList {
        pegs = List.copyOf(pegs);
        checks = List.copyOf(checks);
    }

    /**
     * One peg.
     *
     * @param number from 1, in the order of the list
     * @param box name of the box whose corner it marks
     * @param at where, mm
     * @param tapes two tapes that cross there; empty where none cross well
     * @param offset its place off a line between two known points, where no tapes cross well
     */
    public record Peg(int number, String box, Point at, Optional<Tapes> tapes, Optional<Offset> offset) {}

    /**
     * Two tapes.
     *
     * @param first known point where the first is hooked
     * @param firstMm its length to the peg, mm
     * @param second known point where the second is hooked
     * @param secondMm its length to the peg, mm
     * @param crossingRad angle between them at the peg, radians
     * @param side where the peg lies, looking from the first point to the second
     */
    public record Tapes(
            String first, double firstMm, String second, double secondMm, double crossingRad, TapeSide side) {}

    /**
     * A place off a line.
     *
     * @param from known point where the line starts
     * @param to known point that it runs through
     * @param alongMm distance along it, mm; negative before its start
     * @param squareMm distance square off it, mm, not negative
     * @param side where it lies, looking along the line
     */
    public record Offset(String from, String to, double alongMm, double squareMm, TapeSide side) {}

    /**
     * A distance that must come out.
     *
     * @param box name of the box
     * @param first number of one peg
     * @param second number of the other
     * @param distanceMm from the one to the other, mm
     */
    public record Check(String box, int first, int second, double distanceMm) {}

    /**
     * The list for some boxes.
     *
     * @param survey its points are the known ones, but for those that the program made; at least two
     * @param outline edges of the border
     * @param reachMm longest tape wanted, mm; longer ones are taken only where no pair is in reach
     */
    public static PegList of(SurveyReport survey, Outline outline, List<FootprintPlan> boxes, double reachMm) {
        List<SurveyedPoint> known = survey.points().stream()
                .filter(point -> !outline.isMade(point.name()))
                .toList();
        if (known.size() < 2) {
            throw new IllegalArgumentException("pegs need at least 2 known points, got " + known.size());
        }
        List<Peg> pegs = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        for (FootprintPlan box : boxes) {
            int first = pegs.size() + 1;
            for (Point corner : box.outline().corners()) {
                pegs.add(peg(pegs.size() + 1, box.name(), corner, known, outline, reachMm));
            }
            checks.addAll(checks(box, first));
        }
        return new PegList(pegs, checks, KnownPoints.of(pegs, known, outline));
    }

    private static Peg peg(
            int number, String box, Point at, List<SurveyedPoint> known, Outline outline, double reachMm) {
        Optional<Tapes> tapes = bestTapes(at, known, reachMm);
        if (tapes.isPresent() && crossesWell(tapes.get(), GOOD_CROSSING_DEG)) {
            return new Peg(number, box, at, tapes, Optional.empty());
        }
        Optional<Offset> offEdge = nearestEdge(at, known, outline);
        if (offEdge.isPresent() && offEdge.get().squareMm <= NEAR_EDGE_MM) {
            return new Peg(number, box, at, Optional.empty(), offEdge);
        }
        if (tapes.isPresent() && crossesWell(tapes.get(), LEAST_CROSSING_DEG)) {
            return new Peg(number, box, at, tapes, Optional.empty());
        }
        return new Peg(number, box, at, Optional.empty(), Optional.of(offEdge.orElseGet(() -> anyLine(at, known))));
    }

    private static Optional<Tapes> bestTapes(Point at, List<SurveyedPoint> known, double reachMm) {
        Tapes best = null;
        for (int i = 0; i < known.size(); i++) {
            for (int j = i + 1; j < known.size(); j++) {
                Tapes tapes = tapes(at, known.get(i), known.get(j));
                if (StrictMath.min(tapes.firstMm, tapes.secondMm) >= SHORTEST_TAPE_MM
                        && (best == null || better(tapes, best, reachMm))) {
                    best = tapes;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static Tapes tapes(Point at, SurveyedPoint a, SurveyedPoint b) {
        Point toA = a.at().minus(at);
        Point toB = b.at().minus(at);
        double crossing = StrictMath.abs(StrictMath.atan2(toA.cross(toB), toA.dot(toB)));
        TapeSide side = side(b.at().minus(a.at()).cross(at.minus(a.at())));
        return new Tapes(a.name(), toA.lengthMm(), b.name(), toB.lengthMm(), crossing, side);
    }

    private static boolean better(Tapes a, Tapes b, double reachMm) {
        boolean aReaches = longer(a) <= reachMm;
        if (aReaches != longer(b) <= reachMm) {
            return aReaches;
        }
        boolean aGood = crossesWell(a, GOOD_CROSSING_DEG);
        if (aGood != crossesWell(b, GOOD_CROSSING_DEG)) {
            return aGood;
        }
        return aGood ? longer(a) < longer(b) - 1e-6 : sine(a) > sine(b) + 1e-9;
    }

    private static double longer(Tapes tapes) {
        return StrictMath.max(tapes.firstMm, tapes.secondMm);
    }

    private static double sine(Tapes tapes) {
        return StrictMath.sin(tapes.crossingRad);
    }

    private static boolean crossesWell(Tapes tapes, double leastDeg) {
        return sine(tapes) >= StrictMath.sin(StrictMath.toRadians(leastDeg)) - 1e-12;
    }

    /** Off the edge between two known corners that it lies nearest to, from the corner that is nearer. */
    static Optional<Offset> nearestEdge(Point at, List<SurveyedPoint> known, Outline outline) {
        Offset best = null;
        for (int i = 0; i < outline.ring().size(); i++) {
            Optional<SurveyedPoint> a = named(known, outline.cornerNames().get(i));
            Optional<SurveyedPoint> b = named(
                    known, outline.cornerNames().get((i + 1) % outline.ring().size()));
            if (a.isPresent() && b.isPresent()) {
                boolean fromA =
                        at.distanceMm(a.get().at()) <= at.distanceMm(b.get().at());
                Offset offset = fromA ? offset(at, a.get(), b.get()) : offset(at, b.get(), a.get());
                if (offset.alongMm >= -PAST_END_MM && (best == null || offset.squareMm < best.squareMm - 1e-6)) {
                    best = offset;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    static Optional<SurveyedPoint> named(List<SurveyedPoint> known, String name) {
        return known.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /** Off the line from the nearest known point to the one farthest from it: the longest sight from close by. */
    private static Offset anyLine(Point at, List<SurveyedPoint> known) {
        SurveyedPoint from = known.get(0);
        for (SurveyedPoint point : known) {
            from = at.distanceMm(point.at()) < at.distanceMm(from.at()) - 1e-6 ? point : from;
        }
        SurveyedPoint to = from;
        for (SurveyedPoint point : known) {
            to = from.at().distanceMm(point.at()) > from.at().distanceMm(to.at()) + 1e-6 ? point : to;
        }
        return offset(at, from, to);
    }

    private static Offset offset(Point at, SurveyedPoint from, SurveyedPoint to) {
        Point along = to.at().minus(from.at()).unit();
        Point off = at.minus(from.at());
        double square = along.cross(off);
        return new Offset(from.name(), to.name(), off.dot(along), StrictMath.abs(square), side(square));
    }

    private static TapeSide side(double off) {
        return off > 0 ? TapeSide.LEFT : TapeSide.RIGHT;
    }

    /** Those by which the box is squared when it is put together. */
    private static List<Check> checks(FootprintPlan box, int first) {
        return Diagonal.of(box.outline()).stream()
                .map(d -> new Check(box.name(), first + d.from(), first + d.to(), d.lengthMm()))
                .toList();
    }
}
