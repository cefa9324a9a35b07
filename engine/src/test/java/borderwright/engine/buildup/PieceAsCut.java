package borderwright.engine.buildup;

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
import org.locationtech.jts.geom.Geometry;

/** Draws a piece from its length, cuts and section alone and lays it on its place: the two must be the same. */
final class PieceAsCut {
    private final Piece piece;
    private final List<String> faults = new ArrayList<>();

    private PieceAsCut(Piece piece) {
        this.piece = piece;
    }

    /** In what the piece differs from what is written to be cut. */
    static List<String> faults(Piece piece, List<SectionSpec> sections) {
        PieceAsCut test = new PieceAsCut(piece);
        test.check(sections);
        return test.faults;
    }

    private void check(List<SectionSpec> sections) {
        SectionSpec section = sections.stream()
                .filter(s -> s.name().equals(piece.section()))
                .findFirst()
                .orElseThrow();
        double thickness = section.thickness().mm();
        double width = section.width().mm();
        if (piece.alongMm().z() == 1) {
            standsAsCut(thickness, width);
            return;
        }
        boolean flat = piece.role() == Piece.Role.CAPPING
                || piece.role() == Piece.Role.SLAT
                || StrictMath.abs(piece.place().heightMm() - thickness) < 1e-6 && piece.role() == Piece.Role.BEARER;
        double across = flat ? width : thickness;
        if (StrictMath.abs(piece.place().heightMm() - (flat ? thickness : width)) > 1e-6) {
            faults.add(piece.label() + " is not as high as its section");
        }
        wordsAgree(piece.left(), "left");
        wordsAgree(piece.right(), "right");
        Ring drawn = drawn(across);
        Point along = piece.alongMm().level();
        Ring laid = laid(drawn, along, false, false);
        if (piece.notches().isEmpty()) {
            for (Point p : laid.corners()) {
                double off = piece.place().plan().corners().stream()
                        .mapToDouble(p::distanceMm)
                        .min()
                        .orElseThrow();
                if (off > PutTogether.TOLERANCE_MM) {
                    faults.add(piece.label() + " is not what its cuts say, by " + off + " mm");
                }
            }
        } else {
            fitsWithNotches(drawn, along);
        }
    }

    /** A notch may take a corner, so the piece is laid against each of its four limits in turn. */
    private void fitsWithNotches(Ring drawn, Point along) {
        double least = Double.POSITIVE_INFINITY;
        for (boolean right : new boolean[] {false, true}) {
            for (boolean top : new boolean[] {false, true}) {
                Ring laid = laid(drawn, along, right, top);
                Geometry cut = PutTogether.minus(laid.toJts(), PutTogether.union(holes(laid)));
                Geometry place = piece.place().plan().toJts();
                least = StrictMath.min(
                        least,
                        PutTogether.minus(cut, place).getArea()
                                + PutTogether.minus(place, cut).getArea());
                if (least <= 5) {
                    return;
                }
            }
        }
        faults.add(piece.label() + " is not what its cuts and notches say, by " + least + " mm2");
    }

    private List<Geometry> holes(Ring laid) {
        Point along = piece.alongMm().level();
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

    private void wordsAgree(EndCut cut, String hand) {
        List<String> names = switch (piece.role()) {
            case WALL -> List.of("outer face", "inner face");
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

    private Ring drawn(double across) {
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
    private Ring laid(Ring drawn, Point along, boolean right, boolean top) {
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

    private void standsAsCut(double thickness, double width) {
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
}
