package borderwright.engine.layout.run;

import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.LegJoint;
import borderwright.engine.layout.room.RunClearances;
import borderwright.engine.layout.room.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The room that each leg of a run has, given what becomes of the run at its joints: between the joints, clear of the
 * border's other edges, of planters placed before, and of the run's own earlier legs.
 */
final class ChainRoom {
    private static final double NOTHING_MM = 1e-3;

    private final RunTerms terms;
    private final List<Leg> legs;
    private final List<JointKind> kinds;
    private final List<LegJoint> joints = new ArrayList<>();
    private final List<Boolean> planted;
    private final RunClearances clearances;
    private final FreeRoom room;
    private List<Span> free = new ArrayList<>();

    ChainRoom(RunTerms terms, RunChain.Requested requested, FreeRoom room) {
        this.terms = terms;
        this.legs = requested.legs();
        this.kinds = new ArrayList<>(requested.kinds());
        this.planted = new ArrayList<>(legs.stream().map(leg -> true).toList());
        this.clearances = requested.clearances();
        this.room = room;
        for (int i = 0; i + 1 < legs.size(); i++) {
            joints.add(LegJoint.of(legs.get(i), legs.get(i + 1), terms.depthMm()));
        }
    }

    LegJoint joint(int i) {
        return joints.get(i);
    }

    int joints() {
        return joints.size();
    }

    JointKind kindAfter(int i) {
        return i >= 0 && i < kinds.size() ? kinds.get(i) : JointKind.NONE;
    }

    void becomes(int joint, JointKind kind) {
        kinds.set(joint, kind);
    }

    boolean isPlanted(int leg) {
        return planted.get(leg);
    }

    /** Takes a leg out of the run: its neighbours then end as runs do. */
    void leaveOut(int leg) {
        planted.set(leg, false);
        for (int joint = Math.max(0, leg - 1); joint <= Math.min(leg, kinds.size() - 1); joint++) {
            kinds.set(joint, JointKind.NONE);
        }
    }

    Span freeOn(int leg) {
        return free.get(leg);
    }

    WedgeInfill infillAfter(int leg) {
        return WedgeInfill.at(joints.get(leg), terms);
    }

    /** Works out the free stations of all legs, each clear of those before it. */
    void measure() {
        free = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            free.add(planted.get(i) ? freeBut(i, taken -> false) : new Span(0, 0));
        }
    }

    /** Stations free on a leg, some things that take them left out of account. */
    Span freeBut(int i, Predicate<FreeRoom.Taken> ignored) {
        double from = startLimit(i);
        double to = endLimit(i);
        return to <= from ? new Span(from, from) : new Span(from, to).longestWithout(taken(i, ignored));
    }

    /** Stations that would be free on a leg if it ended at its own ends, mm. */
    double freeWithoutCornersMm(int i) {
        return new Span(0, legs.get(i).lengthMm())
                .longestWithout(taken(i, taken -> false))
                .lengthMm();
    }

    private List<Span> taken(int i, Predicate<FreeRoom.Taken> ignored) {
        return roomBefore(i).taken(legs.get(i), terms.depthMm(), edgesAround(i), ownersAround(i), clearances).stream()
                .filter(ignored.negate())
                .map(FreeRoom.Taken::span)
                .toList();
    }

    private double startLimit(int i) {
        return switch (kindAfter(i - 1)) {
            case BEND, MITRED -> joints.get(i - 1).firstAfterMm();
            case GAP ->
                Math.max(0, joints.get(i - 1).firstAfterMm() + joints.get(i - 1).pullBackMm(terms.betweenMm()));
            case INFILL -> Math.max(0, infillAfter(i - 1).firstAfterMm());
            case NONE -> 0;
        };
    }

    private double endLimit(int i) {
        double length = legs.get(i).lengthMm();
        return switch (kindAfter(i)) {
            case BEND, MITRED -> joints.get(i).lastBeforeMm();
            case GAP ->
                Math.min(length, joints.get(i).lastBeforeMm() - joints.get(i).pullBackMm(terms.betweenMm()));
            case INFILL -> Math.min(length, infillAfter(i).lastBeforeMm());
            case NONE -> length;
        };
    }

    /** The edges that a leg may come near: its own, and those round whose corner its planters go on. */
    private Set<Integer> edgesAround(int i) {
        Set<Integer> edges = new TreeSet<>();
        edges.add(legs.get(i).edge());
        if (goesOn(i - 1)) {
            edges.add(legs.get(i - 1).edge());
        }
        if (goesOn(i)) {
            edges.add(legs.get(i + 1).edge());
        }
        return edges;
    }

    /** Whether a planter goes round a joint. */
    boolean goesOn(int joint) {
        return kindAfter(joint) == JointKind.BEND || kindAfter(joint) == JointKind.MITRED;
    }

    private Set<String> ownersAround(int i) {
        Set<String> owners = new TreeSet<>();
        for (int j = 0; j < i; j++) {
            boolean sameCurve = legs.get(j).edge() == legs.get(i).edge();
            if (sameCurve || (j == i - 1 && kindAfter(j) != JointKind.NONE)) {
                owners.add(owner(j));
            }
        }
        return owners;
    }

    private String owner(int leg) {
        return terms.where() + "#" + leg;
    }

    /** The room with what the legs before {@code i} take of it. */
    private FreeRoom roomBefore(int i) {
        FreeRoom with = room.copy();
        for (int j = 0; j < i && j < free.size(); j++) {
            if (free.get(j).lengthMm() > NOTHING_MM) {
                with.place(owner(j), strip(j), terms.betweenMm());
            }
            if (goesOn(j) && j + 1 < i) {
                List<Ring> halves = joints.get(j).leastHalves(terms.rules().leastEdgeMm());
                with.place(owner(j), halves.get(0), terms.betweenMm());
                with.place(owner(j + 1), halves.get(1), terms.betweenMm());
            }
        }
        return with;
    }

    private Ring strip(int leg) {
        Leg on = legs.get(leg);
        Span span = free.get(leg);
        return new Ring(List.of(
                LegJoint.place(on, span.fromMm(), 0),
                LegJoint.place(on, span.toMm(), 0),
                LegJoint.place(on, span.toMm(), terms.depthMm()),
                LegJoint.place(on, span.fromMm(), terms.depthMm())));
    }

    /** Whether the planter requested at a joint has room there: clear of all but the legs that meet. */
    boolean fits(int joint) {
        LegJoint at = joints.get(joint);
        if (!room.keepsCurves(at, clearances)) {
            return false;
        }
        if (kinds.get(joint) == JointKind.INFILL) {
            return isClear(joint, infillAfter(joint).parts());
        }
        boolean reached = free.get(joint).toMm() >= at.lastBeforeMm() - NOTHING_MM
                && free.get(joint + 1).fromMm() <= at.firstAfterMm() + NOTHING_MM;
        return reached && isClear(joint, at.leastHalves(terms.rules().leastEdgeMm()));
    }

    private boolean isClear(int joint, List<Ring> parts) {
        Set<Integer> own = new TreeSet<>(
                List.of(legs.get(joint).edge(), legs.get(joint + 1).edge()));
        Set<String> neighbours = Set.of(owner(joint), owner(joint + 1));
        FreeRoom with = roomBefore(joint);
        return parts.stream().allMatch(part -> with.isClear(part, own, neighbours, clearances));
    }

    /** Least free length that a leg must have, mm. */
    double leastOn(int i) {
        double edge = terms.rules().leastEdgeMm();
        boolean bends = kindAfter(i - 1) == JointKind.BEND || kindAfter(i) == JointKind.BEND;
        double wings = wingMm(i - 1) + wingMm(i);
        if (bends || (wingMm(i - 1) > 0 && wingMm(i) > 0)) {
            return wings + terms.gapMm() + (bends ? edge : 0);
        }
        return wings > 0 ? wings : terms.rules().leastPlanterMm();
    }

    /** Least length of the wing that a joint's corner planter has on either leg, mm; 0 where there is none. */
    private double wingMm(int joint) {
        return kindAfter(joint) == JointKind.MITRED
                ? joints.get(joint).leastWingMm(terms.rules().leastEdgeMm())
                : 0;
    }

    /** Convex parts that make up the ground which the run takes, for later runs to keep clear of. */
    List<Ring> parts() {
        List<Ring> parts = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            if (planted.get(i)) {
                parts.add(strip(i));
            }
            if (goesOn(i)) {
                parts.addAll(joints.get(i).leastHalves(terms.rules().leastEdgeMm()));
            } else if (kindAfter(i) == JointKind.INFILL) {
                parts.addAll(infillAfter(i).parts());
            }
        }
        return parts;
    }

    int edgesOfBorder() {
        return room.outlineSize();
    }
}
