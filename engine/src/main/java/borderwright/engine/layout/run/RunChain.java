package borderwright.engine.layout.run;

import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.LegJoint;
import borderwright.engine.layout.room.RunClearances;
import borderwright.engine.layout.room.Span;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The legs of a run and what becomes of it at each joint between them, fitted to the room there is.
 *
 * <p>It starts from what was requested and gives way step by step: a leg without room takes no planters, a joint without
 * room for what was requested there becomes a gap. Each step gives up something for good, so the fitting ends.
 *
 * <p>See docs/decisions/0024.
 */
public final class RunChain {
    /** A loss of length that a person would see, mm. */
    private static final double WORTH_REPORTING_MM = 5;

    private final RunTerms terms;
    private final Requested requested;
    private final ChainRoom room;
    private final Findings findings;
    private final Set<Integer> curvesReported = new TreeSet<>();

    /**
     * A run to be fitted.
     *
     * @param path the edges that it follows
     * @param legs in the border's order
     * @param corners name of the corner at each joint; empty at the bends of a curve
     * @param kinds what is requested at each joint
     * @param clearances that were given for the run
     */
    record Requested(
            RunPath path, List<Leg> legs, List<String> corners, List<JointKind> kinds, RunClearances clearances) {
        Requested {
            legs = List.copyOf(legs);
            corners = List.copyOf(corners);
            kinds = List.copyOf(kinds);
        }
    }

    public RunChain(RunTerms terms, Requested requested, FreeRoom room, Findings findings) {
        this.terms = terms;
        this.requested = requested;
        this.room = new ChainRoom(terms, requested, room);
        this.findings = findings;
    }

    /** Fits the run; afterwards the questions below have their final answers. */
    public RunChain fit() {
        do {
            room.measure();
        } while (giveWay());
        for (int i = 0; i < legs().size(); i++) {
            if (isPlanted(i)) {
                sayWhatIsLost(i);
            }
        }
        return this;
    }

    public List<Leg> legs() {
        return requested.legs();
    }

    public Leg leg(int i) {
        return requested.legs().get(i);
    }

    public LegJoint joint(int i) {
        return room.joint(i);
    }

    /** What becomes of the run after leg {@code i}; {@link JointKind#NONE} after the last. */
    public JointKind kindAfter(int i) {
        return room.kindAfter(i);
    }

    public boolean isPlanted(int leg) {
        return room.isPlanted(leg);
    }

    /** Stations free for planters on a leg, corners and gaps taken off. */
    public Span freeOn(int leg) {
        return room.freeOn(leg);
    }

    /** Name of the corner after a leg; empty after the last and within a curve. */
    public String cornerAfter(int leg) {
        return leg < requested.corners().size() ? requested.corners().get(leg) : "";
    }

    public WedgeInfill infillAfter(int leg) {
        return room.infillAfter(leg);
    }

    /** Convex parts that make up the ground which the run takes. */
    public List<Ring> parts() {
        return room.parts();
    }

    /** Whether a person named the corners the other way round than the legs run. */
    public boolean isReversed() {
        return requested.path().reversed();
    }

    /** Gives up the first thing that does not fit; false when all does. */
    private boolean giveWay() {
        for (int i = 0; i < legs().size(); i++) {
            if (isPlanted(i) && freeOn(i).lengthMm() < room.leastOn(i)) {
                giveUpAround(i);
                return true;
            }
        }
        for (int i = 0; i < room.joints(); i++) {
            JointKind kind = kindAfter(i);
            if (kind != JointKind.NONE && kind != JointKind.GAP && !room.fits(i)) {
                findings.unmet(findings.problemMaker().noRoomAtCorner(leg(i), cornerAfter(i), kind, terms));
                room.becomes(i, JointKind.GAP);
                return true;
            }
        }
        return false;
    }

    /** A leg that is too short first loses its corners, where that helps, then its planters. */
    private void giveUpAround(int i) {
        boolean helps = room.freeWithoutCornersMm(i) >= terms.rules().leastPlanterMm();
        for (int joint = i - 1; joint <= i && helps; joint++) {
            JointKind kind = kindAfter(joint);
            if (kind == JointKind.MITRED || kind == JointKind.INFILL) {
                findings.unmet(findings.problemMaker().legTooShortForCorner(leg(i), cornerAfter(joint), kind, terms));
                room.becomes(joint, JointKind.GAP);
                return;
            }
        }
        reportLeftOut(i);
        room.leaveOut(i);
    }

    /** Once for each curve; a leg without length stands for one that was found too tight before. */
    private void reportLeftOut(int i) {
        Leg leg = leg(i);
        if (leg.lengthMm() == 0 || (leg.sagMm() > 0 && !curvesReported.add(leg.edge()))) {
            return;
        }
        double withoutPlanters = room.freeBut(i, taken -> taken.edge() < 0).lengthMm();
        findings.unmet(
                withoutPlanters < room.leastOn(i)
                        ? findings.problemMaker().noRoomOnLeg(leg, freeOn(i).lengthMm(), terms)
                        : findings.problemMaker().takenBefore(leg, freeOn(i).lengthMm(), terms));
    }

    /** Reports where a leg is shorter than its corners make it: by other edges, or by planters placed before. */
    private void sayWhatIsLost(int i) {
        double withoutPlanters = room.freeBut(i, taken -> taken.edge() < 0).lengthMm();
        double withoutFarEdges = room.freeBut(i, taken -> taken.edge() < 0 || !isNextTo(i, taken.edge()))
                .lengthMm();
        if (withoutFarEdges - withoutPlanters > WORTH_REPORTING_MM) {
            findings.unmet(
                    findings.problemMaker().narrowPlace(leg(i), freeOn(i), withoutFarEdges - withoutPlanters, terms));
        }
        if (withoutPlanters - freeOn(i).lengthMm() > WORTH_REPORTING_MM) {
            findings.note(findings.noteMaker().gaveWay(leg(i), freeOn(i), terms));
        }
    }

    private boolean isNextTo(int leg, int edge) {
        int size = room.edgesOfBorder();
        int off = Math.floorMod(edge - leg(leg).edge(), size);
        return off <= 1 || off == size - 1;
    }
}
