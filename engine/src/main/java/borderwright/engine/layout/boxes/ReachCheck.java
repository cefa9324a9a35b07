package borderwright.engine.layout.boxes;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Surroundings;
import borderwright.engine.layout.run.LaidBox;
import borderwright.engine.layout.run.LayoutWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
    private final LayoutWords words;

    public ReachCheck(List<LaidBox> boxes, LayoutWords words) {
        this.boxes = boxes;
        this.words = words;
        for (LaidBox box : boxes) {
            tree.insert(box.plan().outline().toJts().getEnvelopeInternal(), box);
        }
        tree.build();
    }

    /** A sentence for each group of planters that cannot be reached in every place, in order. */
    public List<String> notes() {
        Map<Integer, List<String>> groups = new TreeMap<>();
        Map<String, Integer> groupOf = new TreeMap<>();
        List<String> sentences = new ArrayList<>();
        for (LaidBox box : boxes) {
            List<Segment> access = access(box);
            for (int i = 0; i < box.cells().size(); i++) {
                String sentence = sentence(box, box.cells().get(i), access);
                if (!sentence.isEmpty()) {
                    int group = groupOf.computeIfAbsent(sentence, s -> {
                        sentences.add(s);
                        return sentences.size() - 1;
                    });
                    groups.computeIfAbsent(group, g -> new ArrayList<>())
                            .add(box.plan().planters().get(i));
                }
            }
        }
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < sentences.size(); i++) {
            notes.add(String.join(", ", groups.getOrDefault(i, List.of())) + ": " + sentences.get(i));
        }
        return notes;
    }

    private String sentence(LaidBox box, Ring cell, List<Segment> access) {
        if (access.isEmpty()) {
            return "no side can be reached from lawn, paving or open ground.";
        }
        double reach = box.terms().reachMm() + SAME_MM;
        if (FarthestPlace.isWithin(cell, access, reach)) {
            return "";
        }
        double farthest = FarthestPlace.distanceMm(cell, access);
        if (farthest <= reach) {
            return "";
        }
        return "the place hardest to reach lies " + words.format().length(farthest)
                + " from where a person stands, and reach is "
                + words.format().length(box.terms().reachMm()) + ".";
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
