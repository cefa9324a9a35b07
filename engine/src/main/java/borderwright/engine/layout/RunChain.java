package borderwright.engine.layout;

import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The legs of a run and what becomes of it at each joint between them, fitted to the room there is.
 *
 * <p>It starts from what was wished and gives way step by step: a leg without room takes no planters, a joint without
 * room for what was wished there becomes a gap. Each step gives up something for good, so the fitting ends.
 */
final class RunChain {
    /** Free lengths and joints are compared to within this, mm: far below what can be set out. */
    private static final double SAME_MM = 1e-3;

    private final RunTerms terms;
    private final RunPath path;
    private final List<Leg> legs;
    private final List<String> corners;
    private final List<JointKind> kinds;
    private final List<Joint> joints = new ArrayList<>();
    private final List<Boolean> planted;
    private final Clearances said;
    private final Room room;
    private final LayoutWords words;
    private final Findings findings;
    private List<Span> free = new ArrayList<>();

    /**
     * A run to be fitted.
     *
     * @param legs in the border's order
     * @param corners name of the corner at each joint
     * @param kinds what is wished at each joint
     * @param said distances to keep that were said
     */
    record Wished(RunPath path, List<Leg> legs, List<String> corners, List<JointKind> kinds, Clearances said) {}

    RunChain(RunTerms terms, Wished wished, Room room, LayoutWords words, Findings findings) {
        this.terms = terms;
        this.path = wished.path();
        this.legs = wished.legs();
        this.corners = wished.corners();
        this.kinds = new ArrayList<>(wished.kinds());
        this.planted = new ArrayList<>(legs.stream().map(leg -> true).toList());
        this.said = wished.said();
        this.room = room;
        this.words = words;
        this.findings = findings;
        for (int i = 0; i + 1 < legs.size(); i++) {
            joints.add(Joint.of(legs.get(i), legs.get(i + 1), terms.depthMm()));
        }
    }

    /** Fits the run; afterwards the questions below have their final answers. */
    RunChain fit() {
        do {
            free = freeSpans();
        } while (giveWay());
        return this;
    }

    List<Leg> legs() {
        return legs;
    }

    Leg leg(int i) {
        return legs.get(i);
    }

    Joint joint(int i) {
        return joints.get(i);
    }

    /** What becomes of the run after leg {@code i}; {@link JointKind#NONE} after the last. */
    JointKind kindAfter(int i) {
        return i >= 0 && i < kinds.size() ? kinds.get(i) : JointKind.NONE;
    }

    boolean isPlanted(int leg) {
        return planted.get(leg);
    }

    /** Stations free for planters on a leg, corners and gaps taken off. */
    Span freeOn(int leg) {
        return free.get(leg);
    }

    String cornerAfter(int leg) {
        return corners.get(leg);
    }

    WedgeInfill infillAfter(int leg) {
        return WedgeInfill.at(joints.get(leg), terms.betweenMm(), terms.rules());
    }

    /** The infill's or corner's convex parts must keep clear of all but the legs that meet there. */
    private boolean hasRoom(int joint, List<Ring> parts) {
        Set<Integer> own = new TreeSet<>(
                List.of(legs.get(joint).edge(), legs.get(joint + 1).edge()));
        Set<String> neighbours = Set.of(owner(joint), owner(joint + 1));
        Room withOwn = roomBefore(joint);
        return parts.stream().allMatch(part -> withOwn.isClear(part, own, neighbours, said));
    }

    private List<Span> freeSpans() {
        free = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            free.add(planted.get(i) ? freeSpan(i) : new Span(0, 0));
        }
        return free;
    }

    private Span freeSpan(int i) {
        Leg leg = legs.get(i);
        double from = startLimit(i);
        double to = endLimit(i);
        if (to <= from) {
            return new Span(from, from);
        }
        List<Room.Taken> taken = roomBefore(i).taken(leg, terms.depthMm(), edgesAround(i), ownersAround(i), said);
        return new Span(from, to)
                .longestWithout(taken.stream().map(Room.Taken::span).toList());
    }

    private double startLimit(int i) {
        return switch (kindAfter(i - 1)) {
            case BEND, MITRED -> joints.get(i - 1).firstAfterMm();
            case GAP -> joints.get(i - 1).firstAfterMm() + joints.get(i - 1).pullBackMm(terms.betweenMm());
            case INFILL -> infillAfter(i - 1).firstAfterMm();
            case NONE -> 0;
        };
    }

    private double endLimit(int i) {
        return switch (kindAfter(i)) {
            case BEND, MITRED -> joints.get(i).lastBeforeMm();
            case GAP -> joints.get(i).lastBeforeMm() - joints.get(i).pullBackMm(terms.betweenMm());
            case INFILL -> infillAfter(i).lastBeforeMm();
            case NONE -> legs.get(i).lengthMm();
        };
    }

    /** The edges that a leg may come near: its own, and those that it meets at a joint. */
    private Set<Integer> edgesAround(int i) {
        Set<Integer> edges = new TreeSet<>();
        edges.add(legs.get(i).edge());
        if (kindAfter(i - 1) != JointKind.NONE) {
            edges.add(legs.get(i - 1).edge());
        }
        if (kindAfter(i) != JointKind.NONE) {
            edges.add(legs.get(i + 1).edge());
        }
        return edges;
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
    private Room roomBefore(int i) {
        Room with = room.copy();
        for (int j = 0; j < i && j < free.size(); j++) {
            Span span = free.get(j);
            if (span.lengthMm() > SAME_MM) {
                with.place(owner(j), strip(j, span), terms.betweenMm());
            }
            boolean corner = kindAfter(j) == JointKind.BEND || kindAfter(j) == JointKind.MITRED;
            if (corner && j + 1 < i) {
                List<Ring> halves = joints.get(j).leastHalves(terms.rules().leastEdgeMm());
                with.place(owner(j), halves.get(0), terms.betweenMm());
                with.place(owner(j + 1), halves.get(1), terms.betweenMm());
            }
        }
        return with;
    }

    private Ring strip(int leg, Span span) {
        Leg l = legs.get(leg);
        return new Ring(List.of(
                Joint.place(l, span.fromMm(), 0),
                Joint.place(l, span.toMm(), 0),
                Joint.place(l, span.toMm(), terms.depthMm()),
                Joint.place(l, span.fromMm(), terms.depthMm())));
    }

    /** Gives up the first thing that does not fit; false when all does. */
    private boolean giveWay() {
        for (int i = 0; i < legs.size(); i++) {
            if (planted.get(i) && free.get(i).lengthMm() < leastOn(i)) {
                return giveUpAround(i);
            }
        }
        for (int i = 0; i < kinds.size(); i++) {
            if (kinds.get(i) != JointKind.NONE && kinds.get(i) != JointKind.GAP && !fits(i)) {
                findings.unmet(words.noRoomAtCorner(legs.get(i), corners.get(i), kinds.get(i), terms));
                kinds.set(i, JointKind.GAP);
                return true;
            }
        }
        return false;
    }

    /** Least free length that a leg must have, mm. */
    private double leastOn(int i) {
        double edge = terms.rules().leastEdgeMm();
        boolean bends = kindAfter(i - 1) == JointKind.BEND || kindAfter(i) == JointKind.BEND;
        double wings = wingMm(i - 1) + wingMm(i);
        if (wingMm(i - 1) > 0 && wingMm(i) > 0) {
            return wings + terms.gapMm();
        }
        if (bends) {
            return wings + edge + terms.gapMm();
        }
        return wings > 0 ? wings : terms.rules().leastPlanterMm();
    }

    /** Least length of the wing that a joint's corner planter has on either leg, mm; 0 where there is none. */
    private double wingMm(int joint) {
        return kindAfter(joint) == JointKind.MITRED
                ? joints.get(joint).leastWingMm(terms.rules().leastEdgeMm())
                : 0;
    }

    /** A leg that is too short first loses its corners, then its planters; one without length was reported before. */
    private boolean giveUpAround(int i) {
        boolean known = legs.get(i).lengthMm() == 0;
        for (int joint = i - 1; joint <= i && !known; joint++) {
            JointKind kind = kindAfter(joint);
            if (kind == JointKind.MITRED || kind == JointKind.INFILL) {
                findings.unmet(words.legTooShortForCorner(legs.get(i), corners.get(joint), kind, terms));
                kinds.set(joint, JointKind.GAP);
                return true;
            }
        }
        if (!known) {
            findings.unmet(words.noRoomOnLeg(legs.get(i), free.get(i).lengthMm(), terms));
        }
        planted.set(i, false);
        for (int joint = i - 1; joint <= i; joint++) {
            if (joint >= 0 && joint < kinds.size()) {
                kinds.set(joint, JointKind.NONE);
            }
        }
        return true;
    }

    private boolean fits(int joint) {
        Joint at = joints.get(joint);
        if (kinds.get(joint) == JointKind.INFILL) {
            WedgeInfill infill = infillAfter(joint);
            return hasRoom(joint, infill.parts());
        }
        boolean reached = free.get(joint).toMm() >= at.lastBeforeMm() - SAME_MM
                && free.get(joint + 1).fromMm() <= at.firstAfterMm() + SAME_MM;
        return reached && hasRoom(joint, at.leastHalves(terms.rules().leastEdgeMm()));
    }

    /** Convex parts that make up the ground which the run takes, for later runs to keep clear of. */
    List<Ring> parts() {
        List<Ring> parts = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            if (planted.get(i)) {
                parts.add(strip(i, free.get(i)));
            }
            JointKind kind = kindAfter(i);
            if (kind == JointKind.BEND || kind == JointKind.MITRED) {
                parts.addAll(joints.get(i).leastHalves(terms.rules().leastEdgeMm()));
            } else if (kind == JointKind.INFILL) {
                parts.addAll(infillAfter(i).parts());
            }
        }
        return parts;
    }

    /** Whether a person named the corners the other way round than the legs run. */
    boolean isReversed() {
        return path.reversed();
    }
}
