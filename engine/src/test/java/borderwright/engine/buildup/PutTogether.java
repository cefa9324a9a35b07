package borderwright.engine.buildup;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.EndCut.LongPoint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.message.English;
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
    private static final double TOLERANCE_MM = 0.03;

    /** Overlays are rounded to 0.0001 mm, which makes them sound where edges nearly coincide. */
    private static final PrecisionModel GRID = new PrecisionModel(10_000);

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Box box;
    private final List<SectionSpec> sections;
    private final List<String> faults = new ArrayList<>();

    private PutTogether(Box box, List<SectionSpec> sections) {
        this.box = box;
        this.sections = sections;
    }

    /**
     * What does not close.
     *
     * @param byOverlay whether walls and planters are also compared as a whole, by polygon overlay: slower
     */
    public static List<String> faults(Box box, List<SectionSpec> sections, double wallMm, boolean byOverlay) {
        PutTogether test = new PutTogether(box, sections);
        if (byOverlay) {
            test.coursesFillTheWall(wallMm);
        }
        test.areasAddUp(wallMm);
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

    /** Draws the piece from its length, cuts and section alone and lays it on its place by turning and shifting. */
    private void isWhatItsCutsSay(Piece piece) {
        SectionSpec section = sections.stream()
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
        wordsAgree(piece, piece.left(), "left");
        wordsAgree(piece, piece.right(), "right");
        Ring drawn = drawn(piece, across);
        Point along = new Point(piece.alongMm().x(), piece.alongMm().y());
        Ring laid = laid(drawn, along, piece, false, false);
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
        } else {
            fitsWithNotches(piece, drawn, along);
        }
    }

    /** A notch may take a corner, so the piece is laid against each of its four limits in turn. */
    private void fitsWithNotches(Piece piece, Ring drawn, Point along) {
        double least = Double.POSITIVE_INFINITY;
        for (boolean right : new boolean[] {false, true}) {
            for (boolean top : new boolean[] {false, true}) {
                Ring laid = laid(drawn, along, piece, right, top);
                Geometry cut = minus(laid.toJts(), union(holes(piece, laid)));
                Geometry place = piece.place().plan().toJts();
                least = StrictMath.min(
                        least, minus(cut, place).getArea() + minus(place, cut).getArea());
                if (least <= 5) {
                    return;
                }
            }
        }
        faults.add(piece.label() + " is not what its cuts and notches say, by " + least + " mm2");
    }

    private static List<Geometry> holes(Piece piece, Ring laid) {
        Point along = new Point(piece.alongMm().x(), piece.alongMm().y());
        double start =
                laid.corners().stream().mapToDouble(p -> p.dot(along)).min().orElseThrow();
        double low = laid.corners().stream()
                .mapToDouble(p -> p.dot(along.left()))
                .min()
                .orElseThrow();
        double high = laid.corners().stream()
                .mapToDouble(p -> p.dot(along.left()))
                .max()
                .orElseThrow();
        List<Geometry> holes = new ArrayList<>();
        for (Piece.Notch notch : piece.notches()) {
            double depth = notch.depth().mm();
            boolean lower = notch.edge().code() == CutMessage.LOWER_EDGE;
            double from = start + notch.fromLeft().mm();
            double bottom = lower ? low - 1 : high - depth;
            double top = lower ? low + depth : high + 1;
            List<Point> corners = new ArrayList<>();
            for (double[] c : new double[][] {
                {from, bottom},
                {from + notch.width().mm(), bottom},
                {from + notch.width().mm(), top},
                {from, top}
            }) {
                corners.add(along.times(c[0]).plus(along.left().times(c[1])));
            }
            holes.add(new Ring(corners).toJts());
        }
        return holes;
    }

    private void wordsAgree(Piece piece, EndCut cut, String hand) {
        List<String> names = switch (piece.role()) {
            case WALL -> List.of("outside face", "inside face");
            case CAPPING -> List.of("outer edge", "inner edge");
            default ->
                cut.fenceDeg() > 0 ? List.of("lower edge", "upper edge") : List.of("marked face", "unmarked face");
        };
        String words = cut.longPoint() == LongPoint.NONE
                ? "square"
                : " from square at the " + hand + " end: long point on the " + names.get(isNear(cut) ? 0 : 1)
                        + ", short point ";
        String worded = English.METRIC.text(cut.words());
        if (!worded.contains(words)) {
            faults.add(piece.label() + " is worded: " + worded);
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

    /** Turned so that its length runs along, shifted against the piece's limits. */
    private static Ring laid(Ring drawn, Point along, Piece piece, boolean right, boolean top) {
        List<Point> there = piece.place().plan().corners();
        double s = limit(there, along, right) - limit(drawn.corners(), new Point(1, 0), right);
        double w = limit(there, along.left(), top) - limit(drawn.corners(), new Point(0, 1), top);
        Point shift = along.times(s).plus(along.left().times(w));
        return new Ring(drawn.corners().stream()
                .map(p -> along.times(p.xMm()).plus(along.left().times(p.yMm())).plus(shift))
                .toList());
    }

    private static double limit(List<Point> corners, Point axis, boolean greatest) {
        double limit = greatest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (Point p : corners) {
            limit = greatest ? StrictMath.max(limit, p.dot(axis)) : StrictMath.min(limit, p.dot(axis));
        }
        return limit;
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
        if (piece.rip() != null
                && !isRippedFrom(place.plan(), thickness, width, piece.rip().tiltDeg())) {
            faults.add(piece.label() + " is not its section ripped at its tilt");
        }
    }

    /** Whether a plan fits its section tightly, with every side along a face or at the rip's tilt to one. */
    private static boolean isRippedFrom(Ring plan, double thickness, double width, double tiltDeg) {
        for (int i = 0; i < plan.size(); i++) {
            Point axis = plan.direction(i);
            double along = extent(plan, axis);
            double across = extent(plan, axis.left());
            boolean tight = StrictMath.abs(along - thickness) < 1e-3 && StrictMath.abs(across - width) < 1e-3
                    || StrictMath.abs(along - width) < 1e-3 && StrictMath.abs(across - thickness) < 1e-3;
            if (tight && sidesAre(plan, axis, tiltDeg)) {
                return true;
            }
        }
        return false;
    }

    private static boolean sidesAre(Ring plan, Point axis, double tiltDeg) {
        int ripped = 0;
        for (int k = 0; k < plan.size(); k++) {
            double sine = StrictMath.abs(plan.direction(k).cross(axis));
            double degrees = StrictMath.toDegrees(StrictMath.asin(StrictMath.min(1, sine)));
            boolean faced = degrees < 1e-3 || degrees > 90 - 1e-3;
            boolean tilted = StrictMath.abs(degrees - tiltDeg) < 1e-3 || StrictMath.abs(90 - degrees - tiltDeg) < 1e-3;
            if (!faced && !tilted) {
                return false;
            }
            ripped += faced ? 0 : 1;
        }
        return ripped == 1;
    }

    private static double extent(Ring plan, Point axis) {
        double least =
                plan.corners().stream().mapToDouble(p -> p.dot(axis)).min().orElseThrow();
        return plan.corners().stream().mapToDouble(p -> p.dot(axis)).max().orElseThrow() - least;
    }

    private static Geometry union(List<Geometry> parts) {
        return parts.isEmpty() ? FACTORY.createPolygon() : UnaryUnionNG.union(parts, FACTORY, GRID);
    }

    private static Geometry minus(Geometry a, Geometry b) {
        Geometry rest = OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, GRID);
        return FACTORY.buildGeometry(PolygonExtracter.getPolygons(rest));
    }

    private void tell(String what, Geometry off) {
        if (off.getArea() > 1 && !off.buffer(-TOLERANCE_MM).isEmpty()) {
            faults.add(what + ": " + off.getArea() + " mm2 about " + off.getCentroid());
        }
    }
}
