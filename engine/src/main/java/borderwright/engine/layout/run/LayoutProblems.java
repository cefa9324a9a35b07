package borderwright.engine.layout.run;

import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.Span;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import java.util.List;

/** Makes the problems of this stage: what of a request cannot be met, where, and with which figures. */
public final class LayoutProblems {
    private final Outline outline;

    public LayoutProblems(Outline outline) {
        this.outline = outline;
    }

    private String edge(Leg leg) {
        return outline.edgeAlong(leg.edge());
    }

    private static Problem at(RunTerms terms, String field, Message message) {
        return new Problem(terms.where() + "." + field, message);
    }

    public Problem notAlong(RunTerms terms) {
        String corners = String.join(" ", outline.cornerNames());
        return at(
                terms,
                "along",
                LayoutProblemMessage.LAYOUT_ALONG.of(
                        terms.spec().name(), terms.spec().along().toString(), corners));
    }

    public Problem rangeNotPlanned(RunTerms terms, String field, LengthRange range) {
        return at(
                terms,
                field,
                LayoutProblemMessage.LAYOUT_RANGE.of(field, range.from().mm()));
    }

    public Problem planterNumberNotGiven(RunTerms terms) {
        return new Problem(
                terms.where(),
                LayoutProblemMessage.LAYOUT_PLANTERS_NOT_GIVEN.of(terms.spec().name()));
    }

    public Problem tooShallow(RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_DEPTH_TOO_SHALLOW.of(
                terms.depthMm(), terms.rules().leastEdgeMm(), terms.rules().wallMm());
        return at(terms, "front to back", message);
    }

    Problem depthDoesNotFit(RunTerms terms, double fitsMm, List<String> edges) {
        return at(
                terms,
                "front to back",
                LayoutProblemMessage.LAYOUT_DEPTH_DOES_NOT_FIT.of(terms.depthMm(), edges, fitsMm));
    }

    Problem narrowPlace(Leg leg, Span free, double lostMm, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_NARROW.of(
                edge(leg),
                terms.depthMm(),
                lostMm,
                free.fromMm(),
                free.toMm(),
                outline.cornerNames().get(leg.edge()));
        return at(terms, "front to back", message);
    }

    Problem cornerOutOfRange(String corner, double degrees, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_CORNER_ANGLE.of(
                corner, degrees, LayoutRules.LEAST_ANGLE_DEG, LayoutRules.GREATEST_ANGLE_DEG);
        return at(terms, "turn", message);
    }

    /** No room at a corner, or at a bend of a curve where the name of the corner is empty. */
    Problem noRoomAtCorner(Leg before, String corner, JointKind kind, RunTerms terms) {
        Message message = corner.isEmpty()
                ? LayoutProblemMessage.LAYOUT_BEND_ROOM.of(edge(before), planterFor(kind), terms.depthMm())
                : LayoutProblemMessage.LAYOUT_CORNER_ROOM.of(corner, planterFor(kind), terms.depthMm());
        return at(terms, "turn", message);
    }

    private static String planterFor(JointKind kind) {
        return kind == JointKind.INFILL ? "infill" : "corner";
    }

    Problem legTooShortForCorner(Leg leg, String corner, JointKind kind, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_EDGE_SHORT_FOR_CORNER.of(
                edge(leg),
                leg.lengthMm(),
                planterFor(kind),
                corner,
                terms.rules().leastEdgeMm());
        return at(terms, "turn", message);
    }

    Problem noRoomOnLeg(Leg leg, double freeMm, RunTerms terms) {
        Message message = leg.sagMm() > 0
                ? LayoutProblemMessage.LAYOUT_CURVE_WITHOUT_ROOM.of(edge(leg), terms.depthMm())
                : LayoutProblemMessage.LAYOUT_EDGE_SHORT.of(
                        edge(leg),
                        Math.max(0, freeMm),
                        terms.depthMm(),
                        terms.rules().leastPlanterMm());
        return at(terms, "along", message);
    }

    Problem takenBefore(Leg leg, double freeMm, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_TAKEN.of(
                edge(leg), Math.max(0, freeMm), terms.depthMm(), terms.rules().leastPlanterMm());
        return at(terms, "along", message);
    }

    Problem fewerPlanters(Leg leg, int requested, BayLengths fit, BayLengths.Share share, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_PLANTERS.of(
                requested,
                edge(leg),
                share.freeMm(),
                terms.rules().leastPlanterMm(),
                fit.planters(),
                Math.max(1, fit.planters()));
        return at(terms, "planters", message);
    }

    Problem fewerOfLength(Leg leg, BayLengths requested, int fits, double freeMm, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_PLANTERS_OF_LENGTH.of(
                requested.planters(), requested.planterMm(), leg.backMm(), edge(leg), freeMm, fits, Math.max(1, fits));
        return at(terms, "planters", message);
    }

    Problem dividersLost(Leg leg, int lost, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_DIVIDERS.of(
                edge(leg), lost, terms.rules().leastEdgeMm());
        return at(terms, "planters", message);
    }

    Problem lengthOutOfRange(Leg leg, BayLengths fit, LengthRange wanted, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_LENGTH.of(
                edge(leg), wanted.from().mm(), wanted.to().mm(), fit.planters(), fit.planterMm());
        return at(terms, "length", message);
    }

    Problem curveTooTight(int edge, CurveFacets curve, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_CURVE.of(
                outline.edgeAlong(edge),
                curve.arc().radiusMm(),
                terms.depthMm(),
                terms.rules().leastEdgeMm());
        return at(terms, "front to back", message);
    }

    Problem sagTooGreat(int edge, CurveFacets.Facets facets, RunTerms terms) {
        Message message = LayoutProblemMessage.LAYOUT_SAG.of(
                outline.edgeAlong(edge),
                facets.sagMm(),
                terms.sagMm(),
                terms.rules().leastEdgeMm(),
                Math.ceil(facets.sagMm()));
        return at(terms, "off the curve", message);
    }

    public Problem buriedHighEnd(RunTerms terms, double shownMm, double fallMm) {
        double enoughMm = Math.ceil(fallMm * 2);
        Message message = LayoutProblemMessage.LAYOUT_SLOPE.of(
                fallMm,
                terms.spec().name(),
                terms.heightMm(),
                LayoutNotes.shown(shownMm),
                enoughMm,
                enoughMm > GivenRun.MOST_HEIGHT_MM ? "no" : "yes");
        return at(terms, "slope", message);
    }

    public Problem overlaps(LaidBox box, String other) {
        return new Problem(
                box.terms().where(),
                LayoutProblemMessage.LAYOUT_OVERLAP.of(box.plan().name(), other));
    }

    public Problem overlapsItself(LaidBox box) {
        return new Problem(
                box.terms().where(),
                LayoutProblemMessage.LAYOUT_OVERLAP_WITH_ITSELF.of(box.plan().name()));
    }
}
