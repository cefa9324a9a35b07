package borderwright.engine.layout.run;

import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.geometry.Arc;
import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Segment;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.LegJoint;
import borderwright.engine.layout.room.RunClearances;
import borderwright.engine.layout.room.Span;
import borderwright.engine.measure.Length;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** From the edges that a run follows to its legs: straight edges as they are, curved ones in facets. */
public final class RunEdges {
    /** A corner that turns by less is a bend: a corner planter of its own would be hard to tell from its neighbours. */
    private static final double BEND_DEG = 10;

    /**
     * Below this turn to the left two edges with different clearances share the greater: nearly in line, their back lines
     * would cross far away; round a projecting corner, the edge that needs more ends at the corner itself.
     */
    private static final double ALIGN_DEG = 30;

    private final Outline outline;
    private final RunPath path;
    private final RunTerms terms;
    private final FreeRoom room;
    private final Findings findings;
    private final List<Double> backsMm;

    public RunEdges(Outline outline, RunPath path, RunTerms terms, FreeRoom room, Findings findings) {
        this.outline = outline;
        this.path = path;
        this.terms = terms;
        this.room = room;
        this.findings = findings;
        this.backsMm = alignedBacks();
    }

    /** Legs, joints as requested, and the distances given. */
    public RunChain.Requested requested() {
        RunClearances clearances = clearances();
        List<Leg> legs = new ArrayList<>();
        List<String> corners = new ArrayList<>();
        List<JointKind> kinds = new ArrayList<>();
        for (int i = 0; i < path.edges().size(); i++) {
            if (i > 0) {
                corners.add(outline.cornerNames().get(path.edges().get(i)));
                kinds.add(JointKind.MITRED);
            }
            JointKind inside = addLegs(i, clearances, legs);
            while (kinds.size() < legs.size() - 1) {
                corners.add("");
                kinds.add(inside);
            }
        }
        for (int i = 0; i < kinds.size(); i++) {
            if (!corners.get(i).isEmpty()) {
                kinds.set(i, kindAt(corners.get(i), LegJoint.of(legs.get(i), legs.get(i + 1), terms.depthMm())));
            }
        }
        return new RunChain.Requested(path, legs, corners, kinds, clearances);
    }

    private JointKind kindAt(String corner, LegJoint joint) {
        CornerTurn turn = terms.turnAt(corner);
        if (turn == CornerTurn.LEAVE_OPEN) {
            return JointKind.GAP;
        }
        double degrees = joint.degrees();
        if (degrees < LayoutRules.LEAST_ANGLE_DEG - 1e-9 || degrees > LayoutRules.GREATEST_ANGLE_DEG + 1e-9) {
            findings.unmet(findings.problemMaker().cornerOutOfRange(corner, degrees, terms));
            return JointKind.GAP;
        }
        if (Math.abs(degrees - 180) < BEND_DEG) {
            return JointKind.BEND;
        }
        return turn == CornerTurn.INFILL ? JointKind.INFILL : JointKind.MITRED;
    }

    private OutlineEdge edge(int i) {
        return outline.edges().get(path.edges().get(i));
    }

    private Segment chord(int i) {
        return outline.ring().side(path.edges().get(i));
    }

    /** Back offsets of the run's edges, mm: neighbours that do not turn far to the left share the greater. */
    private List<Double> alignedBacks() {
        List<Double> backs = new ArrayList<>();
        for (int i = 0; i < path.edges().size(); i++) {
            OutlineEdge edge = edge(i);
            double leanMm = terms.isFree() ? 0 : edge.leanMm();
            backs.add(terms.spec().gaps().back().map(gap -> gap.mm() + leanMm).orElse(edge.clearanceMm()));
        }
        for (int pass = 1; pass < backs.size(); pass++) {
            for (int i = 1; i < backs.size(); i++) {
                double turn = StrictMath.toDegrees(tangent(i - 1, 1).turnTo(tangent(i, 0)));
                if (turn < ALIGN_DEG) {
                    double most = Math.max(backs.get(i - 1), backs.get(i));
                    backs.set(i - 1, most);
                    backs.set(i, most);
                }
            }
        }
        return backs;
    }

    private Line tangent(int i, double fraction) {
        return edge(i).riseMm() == 0 ? chord(i).line() : curve(i, 0, 0, 1).backAt(fraction);
    }

    private RunClearances clearances() {
        RunClearances clearances = new RunClearances(new TreeMap<>());
        for (int i = 0; i < path.edges().size(); i++) {
            clearances = clearances.with(path.edges().get(i), backsMm.get(i));
        }
        Optional<Length> first = terms.spec().gaps().start();
        Optional<Length> last = terms.spec().gaps().end();
        Optional<Length> before = path.reversed() ? last : first;
        Optional<Length> after = path.reversed() ? first : last;
        if (before.isPresent()) {
            clearances = clearances.with(path.edgeBefore(outline), before.get().mm());
        }
        if (after.isPresent()) {
            clearances = clearances.with(path.edgeAfter(outline), after.get().mm());
        }
        return clearances;
    }

    private JointKind addLegs(int i, RunClearances clearances, List<Leg> legs) {
        int edge = path.edges().get(i);
        double planters = terms.planters().orElse(0);
        if (edge(i).riseMm() == 0) {
            legs.add(new Leg(edge, chord(i).line(), chord(i).lengthMm(), backsMm.get(i), edge(i).kind(), planters, 0));
            return JointKind.NONE;
        }
        double from = goesRound(i - 1) ? crossing(i, i - 1, 1, 0) : 0;
        double to = goesRound(i) ? crossing(i, i + 1, 0, 1) : 1;
        CurveFacets curve = curve(i, backsMm.get(i), from, to);
        Optional<CurveFacets.Facets> facets = trimmed(i, curve, clearances);
        if (facets.isEmpty()) {
            findings.unmet(findings.problemMaker().curveTooTight(edge, curve, terms));
            legs.add(new Leg(edge, chord(i).line(), 0, backsMm.get(i), edge(i).kind(), 0, 0));
            return JointKind.NONE;
        }
        if (facets.get().sagMm() > terms.sagMm() + 1e-9) {
            findings.unmet(findings.problemMaker().sagTooGreat(edge, facets.get(), terms));
        }
        findings.note(findings.noteMaker().facets(edge, curve, facets.get()));
        legs.addAll(facets.get().legs());
        return facets.get().bent() ? JointKind.BEND : JointKind.GAP;
    }

    /** Whether a planter may go round the corner between an edge of the run and the next. */
    private boolean goesRound(int i) {
        if (i < 0 || i + 1 >= path.edges().size()) {
            return false;
        }
        double degrees = 180 - StrictMath.toDegrees(tangent(i, 1).turnTo(tangent(i + 1, 0)));
        return degrees >= LayoutRules.LEAST_ANGLE_DEG && degrees <= LayoutRules.GREATEST_ANGLE_DEG;
    }

    /** Where a curve's back meets the back line of a neighbouring edge. */
    private double crossing(int i, int neighbour, double itsEnd, double near) {
        Line line = edge(neighbour).riseMm() == 0
                ? chord(neighbour).line().offset(backsMm.get(neighbour))
                : curve(neighbour, backsMm.get(neighbour), 0, 1).backAt(itsEnd);
        return curve(i, backsMm.get(i), 0, 1).crossing(line, near);
    }

    private CurveFacets curve(int i, double backMm, double from, double to) {
        Arc arc = new Arc(chord(i).from(), chord(i).to(), edge(i).riseMm());
        return new CurveFacets(path.edges().get(i), arc, backMm, edge(i).kind(), terms.depthMm(), from, to);
    }

    /** Facets between the gaps at the run's ends: shortened along the arc until the end facets are free. */
    private Optional<CurveFacets.Facets> trimmed(int i, CurveFacets whole, RunClearances clearances) {
        double from = whole.fromFraction();
        double to = whole.toFraction();
        Optional<CurveFacets.Facets> facets = facets(whole);
        for (int pass = 0; pass < 20 && facets.isPresent(); pass++) {
            List<Leg> legs = facets.get().legs();
            Span first = free(legs.get(0), i, clearances);
            Span last = free(legs.get(legs.size() - 1), i, clearances);
            double startMm = i == 0 ? first.fromMm() : 0;
            double endMm =
                    i == path.edges().size() - 1 ? legs.get(legs.size() - 1).lengthMm() - last.toMm() : 0;
            if (startMm < 1e-3 && endMm < 1e-3) {
                break;
            }
            from = Math.min(from + startMm / whole.wholeMm(), 0.45);
            to = Math.max(to - endMm / whole.wholeMm(), 0.55);
            facets = facets(whole.between(from, to));
        }
        return facets;
    }

    private Span free(Leg leg, int i, RunClearances clearances) {
        Set<Integer> own = new TreeSet<>(Set.of(path.edges().get(i)));
        if (i > 0) {
            own.add(path.edges().get(i - 1));
        }
        if (i + 1 < path.edges().size()) {
            own.add(path.edges().get(i + 1));
        }
        List<Span> taken = room.taken(leg, terms.depthMm(), own, Set.of(), clearances).stream()
                .map(FreeRoom.Taken::span)
                .toList();
        Span free = new Span(0, leg.lengthMm()).longestWithout(taken);
        // A leg that is taken whole is to be left behind from whichever end.
        return free.lengthMm() > 0 ? free : new Span(leg.lengthMm(), 0);
    }

    private Optional<CurveFacets.Facets> facets(CurveFacets curve) {
        int planters = planters(curve);
        return terms.isJoined()
                ? curve.forJoinedPlanters(planters, terms.sagMm(), terms.rules())
                : curve.forSeparatePlanters(planters, terms.sagMm(), terms.rules());
    }

    private int planters(CurveFacets curve) {
        Optional<LengthRange> wanted = terms.length();
        if (terms.planters().isPresent() || wanted.isEmpty()) {
            return terms.planters().orElse(1);
        }
        return new BayLengths.Share(curve.middleMm(), List.of(), terms.gapMm(), terms.rules())
                .nearest(wanted.get())
                .map(BayLengths::planters)
                .orElse(1);
    }
}
