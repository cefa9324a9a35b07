package borderwright.engine.layout.boxes;

import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.LegJoint;
import borderwright.engine.layout.run.JointKind;
import borderwright.engine.layout.run.LayoutNote;
import borderwright.engine.layout.run.Nose;
import borderwright.engine.layout.run.OpenPlace;
import borderwright.engine.layout.run.RunChain;
import borderwright.engine.layout.run.RunTerms;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ground that a fitted run leaves open at its corners and ends, with its size. */
public final class OpenGround {
    private final RunChain chain;
    private final RunTerms terms;
    private final FreeRoom room;
    private final Outline outline;

    public OpenGround(RunChain chain, RunTerms terms, FreeRoom room, Outline outline) {
        this.chain = chain;
        this.terms = terms;
        this.room = room;
        this.outline = outline;
    }

    public List<OpenPlace> openings() {
        List<OpenPlace> openings = new ArrayList<>();
        for (int leg = 0; leg < chain.legs().size(); leg++) {
            if (chain.isPlanted(leg)) {
                if (chain.kindAfter(leg - 1) == JointKind.NONE) {
                    startWedge(leg).ifPresent(openings::add);
                }
                if (chain.kindAfter(leg) == JointKind.NONE) {
                    endWedge(leg).ifPresent(openings::add);
                }
                atJoint(leg).ifPresent(openings::add);
            }
        }
        return openings;
    }

    private Optional<OpenPlace> atJoint(int leg) {
        boolean corner = !chain.cornerAfter(leg).isEmpty();
        return switch (chain.kindAfter(leg)) {
            case MITRED -> tip(leg, new BoxOutline(chain, terms).nose(leg));
            case INFILL -> tip(leg, chain.infillAfter(leg).nose());
            case GAP -> corner ? gap(leg) : Optional.empty();
            case BEND, NONE -> Optional.empty();
        };
    }

    private Optional<OpenPlace> tip(int leg, Nose nose) {
        if (!nose.isCut()) {
            return Optional.empty();
        }
        Ring ring = nose.tip();
        double before = nose.before().towards(nose.after(), 0.5).distanceMm(ring.corner(1));
        return Optional.of(new OpenPlace(
                ring,
                area -> LayoutNote.LAYOUT_OPEN_TIP.of(
                        chain.cornerAfter(leg), terms.reachMm(), ring.sideMm(2), before, area)));
    }

    private Optional<OpenPlace> gap(int leg) {
        LegJoint joint = chain.joint(leg);
        double from = chain.freeOn(leg).toMm();
        double to = chain.freeOn(leg + 1).fromMm();
        Point backBefore = LegJoint.place(joint.before(), from, 0);
        Point backAfter = LegJoint.place(joint.after(), to, 0);
        Point frontBefore = LegJoint.place(joint.before(), from, terms.depthMm());
        Point frontAfter = LegJoint.place(joint.after(), to, terms.depthMm());
        double apart = Math.min(backBefore.distanceMm(backAfter), frontBefore.distanceMm(frontAfter));
        return ring(List.of(backBefore, joint.back(), backAfter, frontAfter, frontBefore))
                .map(ring -> new OpenPlace(
                        ring, area -> LayoutNote.LAYOUT_OPEN_GAP.of(chain.cornerAfter(leg), apart, area)));
    }

    private Optional<OpenPlace> startWedge(int leg) {
        double at = chain.freeOn(leg).fromMm();
        Leg on = chain.leg(leg);
        return wedge(leg, LegJoint.place(on, at, 0), LegJoint.place(on, at, terms.depthMm()), -1);
    }

    private Optional<OpenPlace> endWedge(int leg) {
        double at = chain.freeOn(leg).toMm();
        Leg on = chain.leg(leg);
        return wedge(leg, LegJoint.place(on, at, terms.depthMm()), LegJoint.place(on, at, 0), 1);
    }

    /**
     * The ground between a square end and the edge that it faces, from the end's own corners out to the edge's clearance.
     *
     * @param first corner of the end, the end on the right hand going to {@code second}
     * @param outwards 1 towards greater stations, -1 towards smaller
     */
    private Optional<OpenPlace> wedge(int leg, Point first, Point second, int outwards) {
        Leg on = chain.leg(leg);
        int size = room.outlineSize();
        int neighbour = Math.floorMod(on.edge() + outwards, size);
        for (FreeRoom.Wall wall : room.walls()) {
            if (wall.edge() == neighbour) {
                Line clear = wall.segment().line().offset(wall.clearanceMm());
                Optional<Point> out =
                        Line.between(first, first.plus(on.direction())).meet(clear);
                Optional<Point> back =
                        Line.between(second, second.plus(on.direction())).meet(clear);
                if (out.isPresent()
                        && back.isPresent()
                        && faces(on, first, out.get(), outwards)
                        && faces(on, second, back.get(), outwards)
                        && onWall(wall, out.get())
                        && onWall(wall, back.get())) {
                    return ring(List.of(second, first, out.get(), back.get()))
                            .map(ring -> new OpenPlace(
                                    ring, area -> LayoutNote.LAYOUT_OPEN_WEDGE.of(outline.edgeAlong(neighbour), area)));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean faces(Leg on, Point from, Point to, int outwards) {
        return to.minus(from).dot(on.direction()) * outwards > -1e-3;
    }

    private static boolean onWall(FreeRoom.Wall wall, Point point) {
        double along = wall.segment().line().stationMm(point);
        double spare = wall.clearanceMm() + 1e-3;
        return along > -spare && along < wall.segment().lengthMm() + spare;
    }

    /** A ring of these corners, those that coincide taken once; empty when it has next to no area. */
    private static Optional<Ring> ring(List<Point> corners) {
        List<Point> apart = new ArrayList<>();
        for (Point corner : corners) {
            if (apart.stream().noneMatch(p -> p.distanceMm(corner) < 1e-3)) {
                apart.add(corner);
            }
        }
        return apart.size() < 3 || Ring.signedAreaMm2(apart) < 1 ? Optional.empty() : Optional.of(new Ring(apart));
    }
}
