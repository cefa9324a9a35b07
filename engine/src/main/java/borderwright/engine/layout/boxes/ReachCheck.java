package borderwright.engine.layout.boxes;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Surroundings;
import borderwright.engine.layout.run.LaidBox;
import borderwright.engine.layout.run.LayoutNote;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Whether every place in a planter can be reached by a person standing beside it.
 *
 * <p>A side gives access where lawn, paving or open ground lies in front of its middle and no other planter stands there.
 * The place hardest to reach is the one farthest from the nearest of those sides ({@link FarthestPlace}).
 */
public final class ReachCheck {
    private static final double SAME_MM = 0.5;

    private final List<LaidBox> boxes;
    private final STRtree tree = new STRtree();

    public ReachCheck(List<LaidBox> boxes) {
        this.boxes = boxes;
        for (LaidBox box : boxes) {
            tree.insert(box.plan().outline().toJts().getEnvelopeInternal(), box);
        }
        tree.build();
    }

    /**
     * Why a planter cannot be reached in every place, as far as a person can tell planters apart by it.
     *
     * @param farthestMm whole millimetres to the place hardest to reach; negative when there is nowhere to stand
     * @param reachMm the reach asked for, mm
     */
    private record Shortcoming(long farthestMm, double reachMm) {
        Message note(List<String> planters) {
            return farthestMm < 0
                    ? LayoutNote.LAYOUT_NO_ACCESS.of(planters)
                    : LayoutNote.LAYOUT_REACH.of(planters, farthestMm, reachMm);
        }
    }

    /** A note for each group of planters that cannot be reached in every place, in order. */
    public List<Message> notes() {
        Map<Shortcoming, List<String>> groups = new LinkedHashMap<>();
        for (LaidBox box : boxes) {
            List<Segment> access = access(box);
            for (int i = 0; i < box.cells().size(); i++) {
                String planter = box.plan().planters().get(i);
                shortcoming(box, box.cells().get(i), access)
                        .ifPresent(shortcoming -> groups.computeIfAbsent(shortcoming, s -> new ArrayList<>())
                                .add(planter));
            }
        }
        List<Message> notes = new ArrayList<>();
        groups.forEach((shortcoming, planters) -> notes.add(shortcoming.note(planters)));
        return notes;
    }

    private static Optional<Shortcoming> shortcoming(LaidBox box, Ring cell, List<Segment> access) {
        if (access.isEmpty()) {
            return Optional.of(new Shortcoming(-1, 0));
        }
        double reach = box.terms().reachMm() + SAME_MM;
        if (FarthestPlace.isWithin(cell, access, reach)) {
            return Optional.empty();
        }
        double farthest = FarthestPlace.distanceMm(cell, access);
        return farthest <= reach
                ? Optional.empty()
                : Optional.of(
                        new Shortcoming(StrictMath.round(farthest), box.terms().reachMm()));
    }

    /** The sides of a box that a person can stand at. */
    private List<Segment> access(LaidBox box) {
        List<Segment> access = new ArrayList<>();
        Ring ring = box.plan().outline();
        for (int i = 0; i < ring.size(); i++) {
            if (box.plan().sides().get(i).facing().givesAccess() && !blocked(box, ring.side(i))) {
                access.add(ring.side(i));
            }
        }
        return access;
    }

    /** Whether another planter stands in front of the middle of a side. */
    private boolean blocked(LaidBox own, Segment side) {
        Point out = side.line().direction().left().times(-Surroundings.STANDING_MM / 2);
        Point feet = side.middle().plus(out);
        Segment step = new Segment(side.middle(), feet);
        Envelope around = new Envelope(
                new Coordinate(side.middle().xMm(), side.middle().yMm()), new Coordinate(feet.xMm(), feet.yMm()));
        for (Object found : tree.query(around)) {
            LaidBox other = (LaidBox) found;
            boolean same = other.plan().name().equals(own.plan().name());
            if (!same && touches(other.plan().outline(), step)) {
                return true;
            }
        }
        return false;
    }

    private static boolean touches(Ring ring, Segment step) {
        if (ring.contains(step.to(), 0)) {
            return true;
        }
        for (int i = 0; i < ring.size(); i++) {
            if (ring.side(i).distanceMm(step) < FreeRoom.TOLERANCE_MM) {
                return true;
            }
        }
        return false;
    }
}
