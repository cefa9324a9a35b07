package borderwright.engine.layout.run;

import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.Span;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Every sentence of this stage about what could not be met. */
public final class LayoutWords {
    private final Outline outline;
    private final LengthFormat format;

    public LayoutWords(Outline outline, UnitSystem units) {
        this.outline = outline;
        this.format = new LengthFormat(units);
    }

    public LengthFormat format() {
        return format;
    }

    public String edge(int edge) {
        int next = (edge + 1) % outline.ring().size();
        return outline.cornerNames().get(edge) + "-" + outline.cornerNames().get(next);
    }

    String degrees(double degrees) {
        return format.angle(Angle.ofDegrees(degrees));
    }

    public Problem notAlong(RunTerms terms) {
        return new Problem(
                "layout-along",
                terms.where() + ".along",
                "The run '" + terms.wish().name() + "' is to follow "
                        + terms.wish().along() + ", which are not neighbouring corners of the border in turn.",
                "The corners in going-round order are " + String.join(" ", outline.cornerNames())
                        + "; name at least two neighbours.");
    }

    public Problem rangeNotPlanned(RunTerms terms, String field, LengthRange range) {
        return new Problem(
                "layout-range",
                terms.where() + "." + field,
                "A range for " + field + " is not planned yet; the smaller, "
                        + format.length(range.from().mm()) + ", is used.",
                "Give one length.");
    }

    public Problem noNumberSaid(RunTerms terms) {
        return new Problem(
                "layout-planters",
                terms.where(),
                "The run '" + terms.wish().name()
                        + "' says neither how many planters nor how long; one planter is laid out along each edge.",
                "Say planters or length.");
    }

    public Problem tooShallow(RunTerms terms) {
        return new Problem(
                "layout-depth",
                terms.where() + ".depth",
                "Planters " + format.length(terms.depthMm()) + " deep are less than the least side of a box, "
                        + format.length(terms.rules().leastEdgeMm()) + " with walls of "
                        + format.piece(terms.rules().wallMm()) + "; the run is left out.",
                "Say a depth of at least " + format.length(terms.rules().leastEdgeMm()) + ".");
    }

    Problem depthDoesNotFit(RunTerms terms, double fitsMm, String edges) {
        return new Problem(
                "layout-depth",
                terms.where() + ".depth",
                "Planters " + format.length(terms.depthMm()) + " deep do not fit along " + edges
                        + ": with the gaps kept, " + format.length(fitsMm) + " is the most; that is laid out instead.",
                "Say a depth of at most " + format.length(fitsMm) + ", or make the gaps smaller.");
    }

    Problem narrowPlace(Leg leg, Span free, double lostMm, RunTerms terms) {
        return new Problem(
                "layout-narrow",
                terms.where() + ".depth",
                "Along " + edge(leg.edge()) + " the border is too narrow in places for planters "
                        + format.length(terms.depthMm()) + " deep: " + format.length(lostMm)
                        + " of its length is left out; planters stand from " + format.length(free.fromMm()) + " to "
                        + format.length(free.toMm()) + ", measured from corner "
                        + outline.cornerNames().get(leg.edge()) + ".",
                "Make the planters less deep to use the whole edge.");
    }

    Problem cornerOutOfRange(String corner, double degrees, RunTerms terms) {
        return new Problem(
                "layout-corner-angle",
                terms.where() + ".turn",
                "The corner at " + corner + " is " + degrees(degrees)
                        + " inside the border; corner planters are built from "
                        + degrees(LayoutRules.LEAST_ANGLE_DEG) + " to " + degrees(LayoutRules.GREATEST_ANGLE_DEG)
                        + ". The run ends square on both sides of it and leaves a gap.",
                "Say turn: gap for this corner to have it so.");
    }

    Problem noRoomAtCorner(Leg before, String corner, JointKind kind, RunTerms terms) {
        String place = corner.isEmpty() ? "a bend of " + edge(before.edge()) : "corner " + corner;
        return new Problem(
                "layout-corner-room",
                terms.where() + ".turn",
                "At " + place + " there is no room for " + planterFor(kind) + " " + format.length(terms.depthMm())
                        + " deep: another edge or planter is too near. A gap is left there instead.",
                "Make the planters less deep, or say turn: gap there.");
    }

    private static String planterFor(JointKind kind) {
        return kind == JointKind.INFILL ? "an infill planter" : "a planter that goes round";
    }

    Problem legTooShortForCorner(Leg leg, String corner, JointKind kind, RunTerms terms) {
        return new Problem(
                "layout-edge-short",
                terms.where() + ".turn",
                "Edge " + edge(leg.edge()) + ", " + format.length(leg.lengthMm()) + " long, is too short for "
                        + planterFor(kind) + " at corner " + corner + " with sides of at least "
                        + format.length(terms.rules().leastEdgeMm()) + ". A gap is left at the corner instead.",
                "Make the planters less deep, or end the run before that edge.");
    }

    Problem noRoomOnLeg(Leg leg, double freeMm, RunTerms terms) {
        if (leg.sagMm() > 0) {
            return new Problem(
                    "layout-edge-short",
                    terms.where() + ".along",
                    "Along a part of the curve " + edge(leg.edge()) + " there is no room for planters "
                            + format.length(terms.depthMm()) + " deep; none stand there.",
                    "Make the planters less deep, or leave that edge out of the run.");
        }
        return new Problem(
                "layout-edge-short",
                terms.where() + ".along",
                "Along " + edge(leg.edge()) + " only " + format.length(Math.max(0, freeMm))
                        + " is free for planters " + format.length(terms.depthMm()) + " deep; a planter needs at least "
                        + format.length(terms.rules().leastPlanterMm()) + ", so none stands there.",
                "Make the planters less deep, or leave that edge out of the run.");
    }

    Problem takenBefore(Leg leg, double freeMm, RunTerms terms) {
        return new Problem(
                "layout-taken",
                terms.where() + ".along",
                "Along " + edge(leg.edge()) + " planters placed before leave only "
                        + format.length(Math.max(0, freeMm)) + " for planters " + format.length(terms.depthMm())
                        + " deep; a planter needs at least "
                        + format.length(terms.rules().leastPlanterMm())
                        + ", so none stands there.",
                "Runs come in order: leave that edge out of this run, or put this run first.");
    }

    String gaveWay(Leg leg, Span free, RunTerms terms) {
        return "Along " + edge(leg.edge()) + " the run '" + terms.wish().name()
                + "' gives way to planters placed before: it stands from " + format.length(free.fromMm()) + " to "
                + format.length(free.toMm()) + ", measured from corner "
                + outline.cornerNames().get(leg.edge()) + ".";
    }

    Problem fewerPlanters(Leg leg, int wished, BayLengths fit, BayLengths.Share share, RunTerms terms) {
        return new Problem(
                "layout-planters",
                terms.where() + ".planters",
                wished + " planters do not fit along " + edge(leg.edge()) + ": "
                        + format.length(share.freeMm()) + " is free, and a planter needs at least "
                        + format.length(terms.rules().leastPlanterMm()) + ". "
                        + (fit.planters() == 1 ? "1 is" : fit.planters() + " are") + " laid out.",
                "Say at most " + Math.max(1, fit.planters()) + " planters.");
    }

    Problem fewerOfLength(Leg leg, int wished, double lengthMm, int fits, double freeMm, RunTerms terms) {
        return new Problem(
                "layout-planters",
                terms.where() + ".planters",
                wished + " planters of " + format.length(lengthMm) + " do not fit in the row "
                        + format.length(leg.backMm()) + " from " + edge(leg.edge()) + ": "
                        + format.length(freeMm) + " is free. "
                        + (fits == 0 ? "One as long as there is room for is" : fits == 1 ? "1 is" : fits + " are")
                        + " laid out.",
                "Say at most " + Math.max(1, fits) + " planters, or shorter ones.");
    }

    Problem dividersLost(Leg leg, int lost, RunTerms terms) {
        return new Problem(
                "layout-planters",
                terms.where() + ".planters",
                "Along " + edge(leg.edge()) + " " + lost + " dividers would stand nearer than "
                        + format.length(terms.rules().leastEdgeMm()) + " to a bend or to another, and are left out.",
                "Say fewer planters.");
    }

    Problem lengthOutOfRange(Leg leg, BayLengths fit, LengthRange wanted, RunTerms terms) {
        return new Problem(
                "layout-length",
                terms.where() + ".length",
                "Along " + edge(leg.edge()) + " no whole number of planters has a length from "
                        + format.length(wanted.from().mm()) + " to "
                        + format.length(wanted.to().mm()) + "; "
                        + fit.planters() + " of " + format.length(fit.planterMm()) + " "
                        + (fit.planters() == 1 ? "comes" : "come") + " nearest.",
                "Widen the range to take in " + format.length(fit.planterMm()) + ".");
    }

    Problem curveTooTight(int edge, CurveFacets curve, RunTerms terms) {
        return new Problem(
                "layout-curve",
                terms.where() + ".depth",
                "The curve along " + edge(edge) + " has a radius of "
                        + format.length(curve.arc().radiusMm()) + ": too tight for planters "
                        + format.length(terms.depthMm()) + " deep with sides of at least "
                        + format.length(terms.rules().leastEdgeMm()) + ". None stand there.",
                "Make the planters less deep, or leave that edge out of the run.");
    }

    Problem sagTooGreat(int edge, CurveFacets.Facets facets, RunTerms terms) {
        return new Problem(
                "layout-sag",
                terms.where() + ".sag",
                "Along " + edge(edge) + " straight sides stand off the curve by " + format.length(facets.sagMm())
                        + ", more than the " + format.length(terms.sagMm())
                        + " wished; with more bends sides would be shorter than "
                        + format.length(terms.rules().leastEdgeMm()) + ".",
                "Say a sag of at least " + format.length(Math.ceil(facets.sagMm()))
                        + ", or make the planters less deep.");
    }

    public Problem buriedHighEnd(RunTerms terms, double shownMm, double fallMm) {
        return new Problem(
                "layout-slope",
                terms.where() + ".slope",
                "The ground falls " + format.length(fallMm) + " under the run '"
                        + terms.wish().name()
                        + "': level, its wall shows " + format.length(terms.heightMm()) + " at the low end and "
                        + shown(shownMm) + " at the high end.",
                "Say slope: stepped, or a height of at least " + format.length(Math.ceil(fallMm * 2)) + ".");
    }

    public String onFeet(RunTerms terms, double fallMm) {
        return "The hard ground falls " + format.length(fallMm) + " under the run '"
                + terms.wish().name() + "': its boxes stand level on feet, "
                + format.length(terms.rules().feetMm().orElse(0)) + " high where the ground is highest.";
    }

    public String levelRun(RunTerms terms, double shownMm, double fallMm) {
        return "The ground falls " + format.length(fallMm) + " under the run '"
                + terms.wish().name()
                + "': level and dug in at the high end, its wall shows " + format.length(terms.heightMm())
                + " at the low end and " + format.length(shownMm) + " at the high end.";
    }

    public String steppedBox(LaidBox box, BedLevels.Level level) {
        double top = level.bedMm() + level.heightMm();
        return box.plan().name() + ": bed " + height(level.bedMm()) + ", wall "
                + format.length(level.heightMm()) + "; it shows " + shown(top - level.lowMm())
                + " at its low end and " + shown(top - level.highMm()) + " at its high end, where "
                + format.length(level.highMm() - level.bedMm()) + " is buried; at the low end "
                + format.length(level.lowMm() - level.bedMm()) + " is.";
    }

    /** Neighbours whose beds lie at one level, with walls of one height. */
    public String steppedBoxes(LaidBox first, LaidBox last, List<BedLevels.Level> levels) {
        double low = levels.stream().mapToDouble(BedLevels.Level::lowMm).min().orElseThrow();
        double high = levels.stream().mapToDouble(BedLevels.Level::highMm).max().orElseThrow();
        double bed = levels.get(0).bedMm();
        double top = bed + levels.get(0).heightMm();
        return first.plan().name() + " to " + last.plan().name() + ": beds " + height(bed) + ", walls "
                + format.length(levels.get(0).heightMm()) + "; " + shown(top - low)
                + " shows where the ground is lowest and "
                + shown(top - high) + " where it is highest, and there " + format.length(high - bed) + " is buried.";
    }

    public String step(LaidBox before, LaidBox after, double stepMm, RunTerms terms) {
        long courses = Math.round(Math.abs(stepMm) / terms.rules().courseMm());
        return "From " + before.plan().name() + " to " + after.plan().name() + " the bed steps "
                + (stepMm < 0 ? "down " : "up ") + format.length(Math.abs(stepMm)) + ", " + courses
                + (courses == 1 ? " course." : " courses.");
    }

    private String height(double mm) {
        return Math.abs(mm) < 0.5
                ? "at the datum"
                : format.length(Math.abs(mm)) + (mm < 0 ? " below" : " above") + " the datum";
    }

    String longerThanBoards(Leg leg, double planterMm, RunTerms terms) {
        return "Along " + edge(leg.edge()) + " planters are " + format.length(planterMm)
                + " long, more than the longest board, "
                + format.length(terms.rules().longestBoardMm())
                + ": their boards are joined between dividers.";
    }

    private String shown(double mm) {
        return mm > 0 ? format.length(mm) : "nothing";
    }

    public Problem overlaps(LaidBox box, String other) {
        return new Problem(
                "layout-overlap",
                box.terms().where(),
                "Planter " + box.plan().name() + " would overlap " + other + " and is left out.",
                "Give the runs more room between them.");
    }

    /** Planters along one edge: of a curve cut up by gaps, all its rows together. */
    String bays(Leg leg, List<BayLengths> rows, RunTerms terms) {
        List<String> parts = new ArrayList<>();
        int planters = rows.stream().mapToInt(BayLengths::planters).sum();
        if (planters > 0) {
            String most = format.length(lengths(rows).max().orElse(0));
            String least = format.length(lengths(rows).min().orElse(0));
            String between = terms.isJoined() && planters > 1 ? " from divider to divider" : " long";
            String count =
                    planters == 1 ? "1 planter " : planters + " planters, " + (least.equals(most) ? "each " : "");
            parts.add(count + (least.equals(most) ? most : least + " to " + most) + between);
        }
        for (BayLengths row : rows) {
            for (double wing : row.wingsMm()) {
                parts.add("a corner planter's wing of " + format.length(wing) + " along its shorter side");
            }
        }
        String place = terms.isFree()
                ? "Row " + format.length(leg.backMm()) + " from " + edge(leg.edge())
                : "Along " + edge(leg.edge());
        return place + ": " + String.join(", ", parts) + ".";
    }

    private static DoubleStream lengths(List<BayLengths> rows) {
        return rows.stream().filter(row -> row.planters() > 0).mapToDouble(BayLengths::planterMm);
    }

    String facets(int edge, CurveFacets curve, CurveFacets.Facets facets) {
        return "Along " + edge(edge) + ", a curve of radius "
                + format.length(curve.arc().radiusMm())
                + ", the planters turn in " + facets.bends()
                + " bends; their straight sides stand off the curve by up to "
                + format.length(facets.sagMm()) + ".";
    }
}
