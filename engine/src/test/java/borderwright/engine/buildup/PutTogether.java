package borderwright.engine.buildup;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Puts the pieces of a box together again with JTS, apart from the code under test, and lists what does not close. */
public final class PutTogether {
    /** Nothing thicker than twice this may overlap or gape, mm. */
    static final double TOLERANCE_MM = 0.03;

    /** Overlays are rounded to 0.0001 mm, which makes them sound where edges nearly coincide. */
    private static final PrecisionModel GRID = new PrecisionModel(10_000);

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Box box;
    private final List<String> faults = new ArrayList<>();

    private PutTogether(Box box) {
        this.box = box;
    }

    /**
     * What does not close.
     *
     * @param byOverlay whether walls and planters are also compared as a whole, by polygon overlay: slower
     */
    public static List<String> faults(Box box, List<SectionSpec> sections, double wallMm, boolean byOverlay) {
        PutTogether test = new PutTogether(box);
        if (byOverlay) {
            test.coursesFillTheWall(wallMm);
        }
        test.areasAddUp(wallMm);
        test.nothingOverlaps();
        test.everythingIsInside();
        box.pieces().forEach(piece -> test.faults.addAll(PieceAsCut.faults(piece, sections)));
        return test.faults;
    }

    private void coursesFillTheWall(double wallMm) {
        Geometry outline = box.plan().outline().toJts();
        Geometry inner = innerRing(wallMm).toJts();
        Geometry wall = minus(outline, inner);
        for (Box.Course course : box.courses()) {
            if (course.number() > 2) {
                repeats(course.number());
                continue;
            }
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

    /** Courses repeat every second: the same boards, higher up. */
    private void repeats(int course) {
        List<Ring> here = plans(course);
        if (!here.equals(plans(course - 2))) {
            faults.add("course " + course + " is not like the one two below");
        }
    }

    private List<Ring> plans(int course) {
        return box.pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.WALL && piece.course() == course)
                .map(piece -> piece.place().plan())
                .toList();
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
        if (convex && clipped(a.place().plan(), b.place().plan(), TOLERANCE_MM).isEmpty()) {
            return;
        }
        tell(
                a.label() + " and " + b.label() + " overlap",
                OverlayNG.overlay(a.place().plan().toJts(), b.place().plan().toJts(), OverlayNG.INTERSECTION, GRID));
    }

    /** What is left of {@code a} after cutting along each side of convex {@code b} moved in by an inset. */
    private static List<Point> clipped(Ring a, Ring b, double insetMm) {
        List<Point> rest = a.corners();
        for (int i = 0; i < b.size() && !rest.isEmpty(); i++) {
            Point inwards = b.direction(i).left();
            Point on = b.corner(i).plus(inwards.times(insetMm));
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

    /**
     * No board overlaps another, none stands out of the outline or into a planter: so where their areas come to that of
     * the wall they fill it.
     */
    private void areasAddUp(double wallMm) {
        double inner = innerRing(wallMm).areaMm2();
        double wall = box.plan().outline().areaMm2() - inner;
        for (Box.Course course : box.courses()) {
            double boards =
                    plans(course.number()).stream().mapToDouble(Ring::areaMm2).sum();
            if (StrictMath.abs(boards - wall) > 2 + wall * 1e-4) {
                faults.add("course " + course.number() + " has " + boards + " mm2, the wall " + wall);
            }
        }
        List<Ring> dividers = box.pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.DIVIDER && piece.course() == 1)
                .map(piece -> piece.place().plan())
                .toList();
        double ground = dividers.stream().mapToDouble(Ring::areaMm2).sum()
                + box.inside().stream().mapToDouble(Ring::areaMm2).sum();
        if (StrictMath.abs(ground - inner) > 2 + inner * 1e-5) {
            faults.add("planters and dividers have " + ground + " mm2, the ground inside " + inner);
        }
        for (Piece piece : box.pieces()) {
            if (piece.role() == Piece.Role.WALL || piece.role() == Piece.Role.DIVIDER) {
                for (Ring planter : box.inside()) {
                    if (!clipped(planter, piece.place().plan(), TOLERANCE_MM).isEmpty()) {
                        faults.add(piece.label() + " stands in a planter");
                    }
                }
            }
        }
    }

    private void everythingIsInside() {
        for (Piece piece : box.pieces()) {
            Ring plan = piece.place().plan();
            if (piece.role() == Piece.Role.CAPPING || !piece.notches().isEmpty()) {
                continue;
            }
            List<Point> within = clipped(box.plan().outline(), plan, 0);
            double inside = within.size() < 3 ? 0 : Ring.signedAreaMm2(within);
            double round = 0;
            for (int i = 0; i < plan.size(); i++) {
                round += plan.sideMm(i);
            }
            if (inside < plan.areaMm2() - round * TOLERANCE_MM) {
                faults.add(piece.label() + " stands out of the box");
            }
        }
    }

    static Geometry union(List<Geometry> parts) {
        return parts.isEmpty() ? FACTORY.createPolygon() : UnaryUnionNG.union(parts, FACTORY, GRID);
    }

    static Geometry minus(Geometry a, Geometry b) {
        Geometry rest = OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, GRID);
        return FACTORY.buildGeometry(PolygonExtracter.getPolygons(rest));
    }

    private void tell(String what, Geometry off) {
        if (off.getArea() > 1 && !off.buffer(-TOLERANCE_MM).isEmpty()) {
            faults.add(what + ": " + off.getArea() + " mm2 about " + off.getCentroid());
        }
    }
}
