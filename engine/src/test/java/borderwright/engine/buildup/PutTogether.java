package borderwright.engine.buildup;

import borderwright.engine.buildup.EndCut.LongPoint;
import borderwright.engine.garden.SectionNote;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Puts the pieces of a box together again with JTS, apart from the code under test, and lists what does not close. */
final class PutTogether {
    /** Nothing thicker than twice this may overlap or gape, mm. */
    private static final double TOLERANCE_MM = 0.03;

    /** Overlays are rounded to 0.0001 mm, which makes them sound where edges nearly coincide. */
    private static final PrecisionModel GRID = new PrecisionModel(10_000);

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Box box;
    private final List<SectionNote> sections;
    private final List<String> faults = new ArrayList<>();

    private PutTogether(Box box, List<SectionNote> sections) {
        this.box = box;
        this.sections = sections;
    }

    static List<String> faults(Box box, List<SectionNote> sections, double wallMm) {
        PutTogether test = new PutTogether(box, sections);
        test.coursesFillTheWall(wallMm);
        test.nothingOverlaps();
        test.everythingIsInside();
        box.pieces().forEach(test::isWhatItsCutsSay);
        return test.faults;
    }

    private void coursesFillTheWall(double wallMm) {
        Geometry outline = box.plan().outline().toJts();
        Geometry inner = innerRing(wallMm).toJts();
        Geometry wall = minus(outline, inner);
        for (Box.Course course : box.courses()) {
            List<Geometry> boards = box.pieces().stream()
                    .filter(piece -> piece.role() == Piece.Role.WALL && piece.course() == course.number())
                    .map(piece -> (Geometry) piece.place().plan().toJts())
                    .toList();
            Geometry union = union(boards);
            tell("course " + course.number() + " gapes", minus(wall, union));
            tell("course " + course.number() + " stands out", minus(union, wall));
        }
        Geometry ground = union(box.pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.DIVIDER && piece.course() == 1)
                .map(piece -> (Geometry) piece.place().plan().toJts())
                .toList());
        Geometry planters =
                union(box.inside().stream().map(ring -> (Geometry) ring.toJts()).toList());
        Geometry filled = ground.isEmpty() ? planters : OverlayNG.overlay(planters, ground, OverlayNG.UNION, GRID);
        tell("planters and dividers leave ground", minus(inner, filled));
        tell("planters and dividers reach into the walls", minus(filled, inner));
        double sum = box.inside().stream().mapToDouble(Ring::areaMm2).sum();
        if (StrictMath.abs(sum - planters.getArea()) > 5) {
            faults.add("planters overlap");
        }
    }

    /** Meeting points of the lines that lie {@code wallMm} inside each side. */
    private Ring innerRing(double wallMm) {
        Ring outline = box.plan().outline();
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point before = outline.direction(i - 1);
            Point after = outline.direction(i);
            Point p = outline.corner(i).plus(before.left().times(wallMm));
            Point q = outline.corner(i).plus(after.left().times(wallMm));
            double sine = before.cross(after);
            double t = StrictMath.abs(sine) < 1e-12 ? 0 : q.minus(p).cross(after) / sine;
            corners.add(p.plus(before.times(t)));
        }
        return new Ring(corners);
    }

    private void nothingOverlaps() {
        List<Piece> pieces = box.pieces();
        List<Envelope> bounds = pieces.stream()
                .map(piece -> piece.place().plan().toJts().getEnvelopeInternal())
                .toList();
        for (int i = 0; i < pieces.size(); i++) {
            for (int k = i + 1; k < pieces.size(); k++) {
                Prism a = pieces.get(i).place();
                Prism b = pieces.get(k).place();
                if (bounds.get(i).intersects(bounds.get(k))
                        && a.bottomMm() < b.topMm() - TOLERANCE_MM
                        && b.bottomMm() < a.topMm() - TOLERANCE_MM) {
                    overlap(pieces.get(i), pieces.get(k));
                }
            }
        }
    }

    private void overlap(Piece a, Piece b) {
        boolean convex = a.notches().isEmpty() && b.notches().isEmpty();
        if (convex && clipped(a.place().plan(), b.place().plan()).isEmpty()) {
            return;
        }
        tell(
                a.label() + " and " + b.label() + " overlap",
                OverlayNG.overlay(a.place().plan().toJts(), b.place().plan().toJts(), OverlayNG.INTERSECTION, GRID));
    }

    /** What is left of {@code a} after cutting along each side of convex {@code b} moved in by the tolerance. */
    private static List<Point> clipped(Ring a, Ring b) {
        List<Point> rest = a.corners();
        for (int i = 0; i < b.size() && !rest.isEmpty(); i++) {
            Point inwards = b.direction(i).left();
            Point on = b.corner(i).plus(inwards.times(TOLERANCE_MM));
            List<Point> next = new ArrayList<>();
            for (int k = 0; k < rest.size(); k++) {
                Point p = rest.get(k);
                Point q = rest.get((k + 1) % rest.size());
                double u = p.minus(on).dot(inwards);
                double v = q.minus(on).dot(inwards);
                if (u > 0) {
                    next.add(p);
                }
                if (u > 0 != v > 0) {
                    next.add(p.towards(q, u / (u - v)));
                }
            }
            rest = next;
        }
        return rest;
    }

    private void everythingIsInside() {
        Geometry outline = box.plan().outline().toJts();
        List<Geometry> within = box.pieces().stream()
                .filter(piece -> piece.role() != Piece.Role.CAPPING && piece.role() != Piece.Role.WALL)
                .map(piece -> (Geometry) piece.place().plan().toJts())
                .toList();
        tell("pieces stand out of the box", minus(union(within), outline));
    }

    /** Draws the piece from its length, cuts and section alone and lays it on its place by turning and shifting. */
    private void isWhatItsCutsSay(Piece piece) {
        SectionNote section = sections.stream()
                .filter(s -> s.name().equals(piece.section()))
                .findFirst()
                .orElseThrow();
        double thickness = section.thickness().mm();
        double width = section.width().mm();
        if (piece.alongMm().z() == 1) {
            standsAsCut(piece, thickness, width);
            return;
        }
        boolean flat = piece.role() == Piece.Role.CAPPING
                || piece.role() == Piece.Role.SLAT
                || StrictMath.abs(piece.place().heightMm() - thickness) < 1e-6 && piece.role() == Piece.Role.BEARER;
        double across = flat ? width : thickness;
        if (StrictMath.abs(piece.place().heightMm() - (flat ? thickness : width)) > 1e-6) {
            faults.add(piece.label() + " is not as high as its section");
        }
        Ring drawn = drawn(piece, across);
        Point along = new Point(piece.alongMm().x(), piece.alongMm().y());
        Ring laid = laid(drawn, along, piece);
        double cutOut = piece.notches().stream()
                .mapToDouble(n -> n.width().mm() * n.depth().mm())
                .sum();
        if (piece.notches().isEmpty()) {
            for (Point p : laid.corners()) {
                double off = piece.place().plan().corners().stream()
                        .mapToDouble(p::distanceMm)
                        .min()
                        .orElseThrow();
                if (off > TOLERANCE_MM) {
                    faults.add(piece.label() + " is not what its cuts say, by " + off + " mm");
                }
            }
        } else if (StrictMath.abs(laid.areaMm2() - cutOut - piece.place().plan().areaMm2()) > 5) {
            faults.add(piece.label() + " is not what its cuts and notches say");
        }
    }

    private static Ring drawn(Piece piece, double across) {
        double length = piece.length().mm();
        double leftBack = back(piece.left(), across);
        double rightBack = back(piece.right(), across);
        boolean leftNear = isNear(piece.left());
        boolean rightNear = isNear(piece.right());
        return new Ring(List.of(
                new Point(leftNear ? 0 : leftBack, 0),
                new Point(length - (rightNear ? 0 : rightBack), 0),
                new Point(length - (rightNear ? rightBack : 0), across),
                new Point(leftNear ? leftBack : 0, across)));
    }

    private static double back(EndCut cut, double across) {
        return across * StrictMath.tan(StrictMath.toRadians(cut.tiltDeg() + cut.fenceDeg()));
    }

    private static boolean isNear(EndCut cut) {
        return cut.longPoint() == LongPoint.MARKED_FACE || cut.longPoint() == LongPoint.LOWER_EDGE;
    }

    /** Turned so that its length runs along, shifted so that it starts where the piece starts. */
    private static Ring laid(Ring drawn, Point along, Piece piece) {
        List<Point> corners = piece.place().plan().corners();
        double s = Double.POSITIVE_INFINITY;
        double w = Double.POSITIVE_INFINITY;
        for (Point p : corners) {
            s = StrictMath.min(s, p.dot(along));
            w = StrictMath.min(w, p.dot(along.left()));
        }
        Point shift = along.times(s).plus(along.left().times(w));
        List<Point> turned = drawn.corners().stream()
                .map(p -> along.times(p.xMm()).plus(along.left().times(p.yMm())).plus(shift))
                .toList();
        return new Ring(turned);
    }

    private void standsAsCut(Piece piece, double thickness, double width) {
        Prism place = piece.place();
        if (StrictMath.abs(place.heightMm() - piece.length().mm()) > 0.002) {
            faults.add(piece.label() + " is not as high as it is long");
        }
        double whole = thickness * width;
        double area = place.plan().areaMm2();
        if (piece.rip() == null && StrictMath.abs(area - whole) > 1e-3) {
            faults.add(piece.label() + " is not its whole section");
        }
        if (piece.rip() != null) {
            double depth = StrictMath.min(thickness, width);
            double wedge = StrictMath.tan(StrictMath.toRadians(piece.rip().tiltDeg())) / 2;
            boolean fits = StrictMath.abs(area - (whole - depth * depth * wedge)) < 1e-3
                    || StrictMath.abs(area - (whole - width * width * wedge)) < 1e-3
                    || StrictMath.abs(area - (whole - thickness * thickness * wedge)) < 1e-3;
            if (!fits) {
                faults.add(piece.label() + " is not its section ripped at its tilt");
            }
        }
    }

    private static Geometry union(List<Geometry> parts) {
        return parts.isEmpty() ? FACTORY.createPolygon() : UnaryUnionNG.union(parts, FACTORY, GRID);
    }

    private static Geometry minus(Geometry a, Geometry b) {
        return OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, GRID);
    }

    private void tell(String what, Geometry off) {
        if (off.getArea() > 1 && !off.buffer(-TOLERANCE_MM).isEmpty()) {
            faults.add(what + ": " + off.getArea() + " mm2 about " + off.getCentroid());
        }
    }
}
