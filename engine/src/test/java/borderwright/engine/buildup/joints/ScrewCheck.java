package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Looks at every screw of a box as a line among its solids; knows nothing of how it was placed. */
final class ScrewCheck {
    /** Two faces stand off by 1 mm each and one slot has 2 mm of play before the screws are tight. */
    private static final double GAP_MM = 4;

    /** Between two axes, in diameters of the thicker screw (common practice, no source). */
    private static final double LEAST = 1.5;

    /** To an end and to an edge that nothing pulls at, in diameters: a3,c and a4,c of EN 1995-1-1 table 8.2, drilled. */
    private static final double END = 7;

    private static final double EDGE = 3;

    /** What the builder rounds. */
    private static final double ROUNDING_MM = 0.01;

    private final Box box;
    private final List<Placed> screws = new ArrayList<>();
    private final Map<String, Integer> faults = new TreeMap<>();
    private final Map<String, Integer> nearEdges = new TreeMap<>();
    private int covered = 0;

    private record Placed(Joint joint, ScrewLine line, double diameterMm) {
        boolean mayMeet(Placed other, double withinMm) {
            double reach = line.lengthMm() + other.line.lengthMm() + withinMm;
            return Math.abs(line.xMm() - other.line.xMm()) < reach
                    && Math.abs(line.yMm() - other.line.yMm()) < reach
                    && Math.abs(line.zMm() - other.line.zMm()) < reach;
        }
    }

    ScrewCheck(Box box) {
        this.box = box;
        Map<String, Double> diameters = new TreeMap<>();
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
        screws.forEach(screw -> lies(screw, about(screw.line)));
    }

    int count() {
        return screws.size();
    }

    /** Heads that a piece covers. */
    int covered() {
        return covered;
    }

    /** How many heads the box itself says are covered. */
    int coveredBySayingSo() {
        return box.notes().stream()
                .filter(note -> note.code() == BuildMessage.HEADS_COVERED)
                .mapToInt(note -> (Integer) note.values().get(0))
                .sum();
    }

    /** How many of each fault, by joint. */
    Map<String, Integer> faults() {
        return faults;
    }

    /** How many screws have less wood beside them than table 8.2 wants, by joint and by what is near: an end or an edge. */
    Map<String, Integer> nearEdges() {
        return nearEdges;
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
                if (a.mayMeet(b, LEAST * thick) && nearest(a.line, b.line) < LEAST * thick) {
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
            double dx = x - u * b.alongX();
            double dy = y - u * b.alongY();
            double dz = z - u * b.alongZ();
            least = Math.min(least, dx * dx + dy * dy + dz * dz);
        }
        return Math.sqrt(least);
    }

    /** The pieces near a screw: no other can hold a place on it or before its head. */
    private List<Piece> about(ScrewLine line) {
        double reach = line.lengthMm() + GAP_MM;
        return box.pieces().stream()
                .filter(piece -> piece.place().bottomMm() < line.zMm() + reach
                        && piece.place().topMm() > line.zMm() - reach
                        && spans(piece, line.xMm(), reach, Point::xMm)
                        && spans(piece, line.yMm(), reach, Point::yMm))
                .toList();
    }

    private static boolean spans(Piece piece, double head, double reach, ToDoubleFunction<Point> axis) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Point corner : piece.place().plan().corners()) {
            least = Math.min(least, axis.applyAsDouble(corner));
            most = Math.max(most, axis.applyAsDouble(corner));
        }
        return least < head + reach && most > head - reach;
    }

    private void lies(Placed screw, List<Piece> about) {
        ScrewLine line = screw.line;
        double outside = 0;
        for (double t = 0.5; t <= line.lengthMm(); t += 0.5) {
            outside += holding(about, line, t).isEmpty() ? 0.5 : 0;
        }
        if (outside > GAP_MM) {
            fault("out of wood", screw.joint);
        }
        List<Piece> first = holding(about, line, 1);
        List<Piece> last = new ArrayList<>(holding(about, line, line.lengthMm() - 3));
        last.removeAll(first);
        if (screw.joint.hold() != Box.Hold.STRAP_TO_UPRIGHT && last.isEmpty()) {
            fault("ends where it began", screw.joint);
        }
        List<Piece> over = holding(about, line, -1.5);
        // The uprights of a corner are screwed to each other before the boards of their walls go on.
        boolean later = screw.joint.hold() == Box.Hold.UPRIGHTS_TOGETHER
                && over.stream().allMatch(piece -> piece.role() == Role.WALL);
        if (!over.isEmpty() && !later) {
            covered++;
        }
        if (line.alongZ() == 0) {
            first.forEach(piece -> besides(screw, piece, 1));
            last.forEach(piece -> besides(screw, piece, line.lengthMm() - 3));
        }
    }

    /** Wood beside a level screw in a piece: along the piece's grain to its end, across it to its edge. */
    private void besides(Placed screw, Piece piece, double depth) {
        ScrewLine line = screw.line;
        Prism solid = piece.place();
        Point at = line.planAt(depth);
        Point into = new Point(line.alongX(), line.alongY());
        double vertical = Math.min(line.zMm() - solid.bottomMm(), solid.topMm() - line.zMm());
        double level = Math.min(
                toFace(solid.plan(), at, into.left()),
                toFace(solid.plan(), at, into.left().times(-1)));
        boolean upright = piece.role() == Role.POST || piece.role() == Role.BRACE;
        boolean endGrain = !upright && Math.abs(piece.alongMm().level().unit().dot(into)) > 0.7;
        double end = endGrain ? Double.POSITIVE_INFINITY : upright ? vertical : level;
        double edge = endGrain ? Math.min(vertical, level) : upright ? level : vertical;
        if (end < END * screw.diameterMm - ROUNDING_MM) {
            nearEdges.merge(screw.joint.hold() + " end of " + piece.role(), 1, Integer::sum);
        }
        if (edge < EDGE * screw.diameterMm - ROUNDING_MM) {
            nearEdges.merge(screw.joint.hold() + " edge of " + piece.role(), 1, Integer::sum);
        }
    }

    /** From a place inside to the nearest face in a direction. */
    private static double toFace(Ring ring, Point from, Point direction) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            Point side = ring.direction(i);
            double speed = direction.cross(side);
            Point off = ring.corner(i).minus(from);
            double away = off.cross(side) / speed;
            double on = off.cross(direction) / speed;
            if (Math.abs(speed) > 1e-9 && away > 0 && on >= 0 && on <= ring.sideMm(i)) {
                least = Math.min(least, away);
            }
        }
        return least;
    }

    private static List<Piece> holding(List<Piece> pieces, ScrewLine line, double depth) {
        Point p = line.planAt(depth);
        double z = line.zAt(depth);
        return pieces.stream()
                .filter(piece -> z >= piece.place().bottomMm()
                        && z <= piece.place().topMm()
                        && piece.place().plan().contains(p, 0.05))
                .toList();
    }
}
