package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Looks at every screw of a box as a line among its solids; knows nothing of how it was placed. */
public final class ScrewCheck {
    /** Two faces stand off by 1 mm each and one slot has 1 mm of play before the screws are tight. */
    private static final double GAP_MM = 3;

    private final Box box;
    private int covered = 0;
    private final Map<String, Double> diameters = new TreeMap<>();
    private final List<Placed> screws = new ArrayList<>();
    private final Map<String, Integer> faults = new TreeMap<>();

    private record Placed(Joint joint, ScrewLine line, double diameterMm) {}

    public ScrewCheck(Box box) {
        this.box = box;
        box.fixings().forEach(fixing -> diameters.put(fixing.item(), fixing.diameterMm()));
        for (Joint joint : box.joints()) {
            for (ScrewLine line : joint.screws()) {
                double d = diameters.getOrDefault(joint.item(), 0.0);
                if (d > 0) {
                    screws.add(new Placed(joint, line, d));
                }
            }
        }
        clashes();
        screws.forEach(this::lies);
    }

    public int count() {
        return screws.size();
    }

    /** Heads that a piece covers. */
    public int covered() {
        return covered;
    }

    /** How many heads the box itself says are covered. */
    public int coveredBySayingSo() {
        return box.notes().stream()
                .filter(note -> note.code() == BuildMessage.HEADS_COVERED)
                .mapToInt(note -> (Integer) note.values().get(0))
                .sum();
    }

    /** How many of each fault, by joint. */
    public Map<String, Integer> faults() {
        return faults;
    }

    private void fault(String what, Joint joint) {
        faults.merge(what + " " + joint.hold() + " " + joint.into(), 1, Integer::sum);
    }

    private void clashes() {
        for (int i = 0; i < screws.size(); i++) {
            for (int k = i + 1; k < screws.size(); k++) {
                Placed a = screws.get(i);
                Placed b = screws.get(k);
                double thick = Math.max(a.diameterMm, b.diameterMm);
                if (Math.abs(a.line.xMm() - b.line.xMm()) < 500
                        && Math.abs(a.line.yMm() - b.line.yMm()) < 500
                        && nearest(a.line, b.line) < 1.5 * thick) {
                    fault("near " + a.joint.hold(), b.joint);
                }
            }
        }
    }

    /** By small steps along the first: slow and plain, for {@code ScrewLine.nearestMm}. */
    private static double nearest(ScrewLine a, ScrewLine b) {
        double least = Double.POSITIVE_INFINITY;
        for (double t = 0; t <= a.lengthMm(); t += 1) {
            Point p = a.planAt(t);
            double x = p.xMm() - b.xMm();
            double y = p.yMm() - b.yMm();
            double z = a.zAt(t) - b.zMm();
            double u = Math.max(0, Math.min(b.lengthMm(), x * b.alongX() + y * b.alongY() + z * b.alongZ()));
            least = Math.min(least, Math.hypot(Math.hypot(x - u * b.alongX(), y - u * b.alongY()), z - u * b.alongZ()));
        }
        return least;
    }

    private void lies(Placed screw) {
        ScrewLine line = screw.line;
        double outside = 0;
        for (double t = 0.5; t <= line.lengthMm(); t += 0.5) {
            outside += inWood(line.planAt(t), line.zAt(t)) ? 0 : 0.5;
        }
        if (outside > GAP_MM) {
            fault("out of wood", screw.joint);
        }
        double depth = line.lengthMm() - 3;
        boolean throughSteel = screw.joint.hold() == Box.Hold.STRAP_TO_UPRIGHT;
        if (!throughSteel
                && box.pieces().stream()
                        .filter(piece -> !holds(piece.place(), line.planAt(1), line.zAt(1)))
                        .noneMatch(piece -> holds(piece.place(), line.planAt(depth), line.zAt(depth)))) {
            fault("ends where it began", screw.joint);
        }
        Point before = line.planAt(-1.5);
        List<Piece> over = box.pieces().stream()
                .filter(piece -> holds(piece.place(), before, line.zAt(-1.5)))
                .toList();
        // The uprights of a corner are screwed to each other before the boards of their walls go on.
        boolean later = screw.joint.hold() == Box.Hold.UPRIGHTS_TOGETHER
                && over.stream().allMatch(piece -> piece.role() == Piece.Role.WALL);
        if (!over.isEmpty() && !later) {
            covered++;
        }
    }

    private boolean inWood(Point p, double z) {
        return box.pieces().stream().anyMatch(piece -> holds(piece.place(), p, z));
    }

    private static boolean holds(Prism solid, Point p, double z) {
        return z >= solid.bottomMm() && z <= solid.topMm() && inside(solid.plan(), p);
    }

    private static boolean inside(Ring ring, Point p) {
        return ring.contains(p, 0.05);
    }
}
