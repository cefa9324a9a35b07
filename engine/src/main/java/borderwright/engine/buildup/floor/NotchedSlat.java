package borderwright.engine.buildup.floor;

import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.Piece.Notch;
import borderwright.engine.buildup.parts.PlacedSolids;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Cuts a slat round the uprights that stand in it.
 *
 * <p>Each upright takes a rectangle with a little room about it, from the edge that is nearer. Where less than 40 mm of
 * the width would be left, or where the upright stands in or near a mitred end, the slat ends before it instead, or is
 * divided in two. A notch within 60 mm of a square end goes through to it.
 */
final class NotchedSlat {
    /** Room about an upright, mm (common practice, no source). */
    private static final double ROOM_MM = 4;

    private static final double LEAST_LEFT_MM = 40;
    private static final double NEAR_END_MM = 60;
    private static final double SHORTEST_MM = 150;

    private final PlacedSolids clearance;
    private final double bottomMm;
    private final double topMm;

    NotchedSlat(PlacedSolids clearance, double bottomMm, double topMm) {
        this.clearance = clearance;
        this.bottomMm = bottomMm;
        this.topMm = topMm;
    }

    /** A slat as cut. */
    record Slat(Strip strip, Ring outline, List<Notch> notches) {}

    /** What an upright takes, in the slat's own coordinates. */
    private record Taken(double fromMm, double toMm, double lowMm, double highMm) {}

    List<Slat> of(Strip wanted) {
        Strip strip = wanted.squared();
        List<Taken> before = new ArrayList<>();
        for (Taken taken : taken(strip)) {
            boolean nearLeft = taken.fromMm < greater(strip.left()) + NEAR_END_MM;
            boolean nearRight = taken.toMm > lesser(strip.right()) - NEAR_END_MM;
            boolean inBevel = (nearLeft && !isSquare(strip.left())) || (nearRight && !isSquare(strip.right()));
            if (inBevel || left(strip, taken) < LEAST_LEFT_MM || meetsAnother(strip, taken, before)) {
                return around(strip, taken, nearLeft, nearRight);
            }
            before.add(taken);
        }
        return List.of(notched(strip));
    }

    private List<Slat> around(Strip strip, Taken taken, boolean nearLeft, boolean nearRight) {
        List<Slat> parts = new ArrayList<>();
        if (!nearLeft) {
            Strip.End right = nearRight ? drawnBack(strip, strip.right(), taken, -1) : Strip.End.square(taken.fromMm);
            parts.addAll(part(strip, strip.left(), right));
        }
        if (!nearRight) {
            Strip.End left = nearLeft ? drawnBack(strip, strip.left(), taken, 1) : Strip.End.square(taken.toMm);
            parts.addAll(part(strip, left, strip.right()));
        }
        return parts;
    }

    /** Whether a notch from the other edge, near along the slat, leaves too little between the two. */
    private static boolean meetsAnother(Strip strip, Taken taken, List<Taken> before) {
        double width = strip.farMm() - strip.nearMm();
        return before.stream()
                .filter(other -> other.toMm + NEAR_END_MM > taken.fromMm)
                .anyMatch(other -> left(strip, other) + left(strip, taken) - width < LEAST_LEFT_MM);
    }

    private static boolean isSquare(Strip.End end) {
        return end.nearMm() == end.farMm();
    }

    private List<Slat> part(Strip strip, Strip.End left, Strip.End right) {
        Strip part = new Strip(strip.origin(), strip.along(), strip.nearMm(), strip.farMm(), left, right);
        return part.shortestMm() < SHORTEST_MM ? List.of() : of(part);
    }

    /** An end moved inwards, its angle kept, until it clears an upright. */
    private static Strip.End drawnBack(Strip strip, Strip.End end, Taken taken, int inwards) {
        double slope = (end.farMm() - end.nearMm()) / (strip.farMm() - strip.nearMm());
        double most = 0;
        for (double w :
                new double[] {StrictMath.max(taken.lowMm, strip.nearMm()), StrictMath.min(taken.highMm, strip.farMm())
                }) {
            double at = end.nearMm() + (w - strip.nearMm()) * slope;
            double reach = inwards > 0 ? taken.toMm - at : at - taken.fromMm;
            most = StrictMath.max(most, reach);
        }
        return new Strip.End(end.nearMm() + inwards * most, end.farMm() + inwards * most);
    }

    /** Width left beside an upright. */
    private static double left(Strip strip, Taken taken) {
        return StrictMath.max(taken.lowMm - strip.nearMm(), strip.farMm() - taken.highMm);
    }

    private List<Taken> taken(Strip strip) {
        List<Taken> taken = new ArrayList<>();
        for (Prism upright : clearance.meeting(new Prism(strip.outline(), bottomMm, topMm))) {
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (Point p : upright.plan().corners()) {
                double s = p.minus(strip.origin()).dot(strip.along());
                double w = p.minus(strip.origin()).dot(strip.along().left());
                from = StrictMath.min(from, s - ROOM_MM);
                to = StrictMath.max(to, s + ROOM_MM);
                low = StrictMath.min(low, w - ROOM_MM);
                high = StrictMath.max(high, w + ROOM_MM);
            }
            taken.add(new Taken(from, to, low, high));
        }
        taken.sort(Comparator.comparingDouble(Taken::fromMm));
        return taken;
    }

    private Slat notched(Strip strip) {
        Geometry outline = strip.outline().toJts();
        List<Notch> notches = new ArrayList<>();
        double start = lesser(strip.left());
        double end = greater(strip.right());
        for (Taken taken : taken(strip)) {
            boolean fromLower = taken.lowMm - strip.nearMm() < strip.farMm() - taken.highMm;
            double depth = fromLower ? taken.highMm - strip.nearMm() : strip.farMm() - taken.lowMm;
            double low = fromLower ? strip.nearMm() - 1 : strip.farMm() - depth;
            double high = fromLower ? strip.nearMm() + depth : strip.farMm() + 1;
            // a tongue left at an end would break off
            double from = taken.fromMm < greater(strip.left()) + NEAR_END_MM ? start : taken.fromMm;
            double to = taken.toMm > lesser(strip.right()) - NEAR_END_MM ? end : taken.toMm;
            Ring hole = new Strip(
                            strip.origin(),
                            strip.along(),
                            low,
                            high,
                            Strip.End.square(from == start ? from - 1 : from),
                            Strip.End.square(to == end ? to + 1 : to))
                    .outline();
            outline = OverlayNGRobust.overlay(outline, hole.toJts(), OverlayNG.DIFFERENCE);
            notches.add(new Notch(
                    Length.ofMm(from - start),
                    Length.ofMm(to - from),
                    Length.ofMm(depth),
                    (fromLower ? CutMessage.LOWER_EDGE : CutMessage.UPPER_EDGE).of()));
        }
        Ring ring = notches.isEmpty() ? strip.outline() : ring((Polygon) outline);
        return new Slat(strip, ring, notches);
    }

    private static Ring ring(Polygon polygon) {
        List<Point> corners = new ArrayList<>();
        CoordinateSequence shell = polygon.getExteriorRing().getCoordinateSequence();
        for (int i = 0; i + 1 < shell.size(); i++) {
            corners.add(new Point(shell.getX(i), shell.getY(i)));
        }
        if (Ring.signedAreaMm2(corners) < 0) {
            Collections.reverse(corners);
        }
        return new Ring(corners);
    }

    private static double lesser(Strip.End end) {
        return StrictMath.min(end.nearMm(), end.farMm());
    }

    private static double greater(Strip.End end) {
        return StrictMath.max(end.nearMm(), end.farMm());
    }
}
