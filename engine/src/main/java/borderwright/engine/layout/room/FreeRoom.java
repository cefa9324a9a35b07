package borderwright.engine.layout.room;

import borderwright.engine.geometry.Arc;
import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/**
 * The room that is left in the border: its edges with their clearances, and the planters already placed.
 *
 * <p>A curved edge is taken as straight lengths on the border's side of it, within half a millimetre, so that keeping
 * clear of them keeps clear of the curve.
 *
 * <p>See docs/decisions/0020.
 */
public final class FreeRoom {
    /** Clearances are kept to within this, mm. */
    public static final double TOLERANCE_MM = 1e-6;

    private static final double CURVE_TOLERANCE_MM = 0.5;

    private final List<Wall> walls = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final Outline outline;

    /**
     * A straight length of an edge.
     *
     * @param edge index of the edge
     * @param segment where it lies
     * @param clearanceMm distance to keep from it, mm
     */
    public record Wall(int edge, Segment segment, double clearanceMm) {}

    /**
     * A convex part of a planter.
     *
     * @param owner what it belongs to
     * @param ring where it lies
     * @param gapMm distance to keep from it, mm
     */
    record Part(String owner, Ring ring, double gapMm) {}

    /**
     * Stations that something takes.
     *
     * @param span the stations
     * @param edge index of the edge that takes them; -1 for a planter
     * @param owner what the planter belongs to; empty for an edge
     */
    public record Taken(Span span, int edge, String owner) {}

    public FreeRoom(Outline outline) {
        this.outline = outline;
        for (int i = 0; i < outline.ring().size(); i++) {
            OutlineEdge edge = outline.edges().get(i);
            for (Segment segment : straightLengths(outline.ring().side(i), edge.riseMm())) {
                walls.add(new Wall(i, segment, edge.clearanceMm()));
            }
        }
    }

    /** How many edges the border has. */
    public int outlineSize() {
        return outline.ring().size();
    }

    public List<Wall> walls() {
        return walls;
    }

    /** The same room, to try things out in. */
    public FreeRoom copy() {
        return new FreeRoom(this);
    }

    private FreeRoom(FreeRoom other) {
        outline = other.outline;
        walls.addAll(other.walls);
        parts.addAll(other.parts);
    }

    public void place(String owner, Ring convex, double gapMm) {
        parts.add(new Part(owner, convex, gapMm));
    }

    /** What takes stations of the strip along a leg, but for some edges and for parts of some owners. */
    public List<Taken> taken(
            Leg leg, double depthMm, Set<Integer> butEdges, Set<String> butOwners, RunClearances clearances) {
        double nearMm = leg.backMm() + TOLERANCE_MM;
        double farMm = leg.backMm() + depthMm - TOLERANCE_MM;
        List<Taken> taken = new ArrayList<>();
        for (Wall wall : walls) {
            if (!butEdges.contains(wall.edge)) {
                Shadow.of(wall.segment, clearances.mm(wall), leg, nearMm, farMm)
                        .ifPresent(span -> taken.add(new Taken(span, wall.edge, "")));
                // Beyond an edge that cuts between the leg's own edge and the strip lies the far side of the border.
                Shadow.of(wall.segment, 0, leg, TOLERANCE_MM - leg.sagMm(), Math.max(TOLERANCE_MM, nearMm))
                        .ifPresent(span -> taken.add(new Taken(span, wall.edge, "")));
            }
        }
        for (Part part : parts) {
            if (!butOwners.contains(part.owner)) {
                shadow(part, leg, nearMm, farMm).ifPresent(span -> taken.add(new Taken(span, -1, part.owner)));
            }
        }
        return taken;
    }

    private static Optional<Span> shadow(Part part, Leg leg, double nearMm, double farMm) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < part.ring.size(); i++) {
            Optional<Span> side = Shadow.of(part.ring.side(i), part.gapMm, leg, nearMm, farMm);
            if (side.isPresent()) {
                from = Math.min(from, side.get().fromMm());
                to = Math.max(to, side.get().toMm());
            }
        }
        return from > to ? Optional.empty() : Optional.of(new Span(from, to));
    }

    /** Whether the back of a corner keeps its distance from the curved edges that meet there. */
    public boolean keepsCurves(LegJoint joint, RunClearances clearances) {
        for (Leg leg : List.of(joint.before(), joint.after())) {
            OutlineEdge edge = outline.edges().get(leg.edge());
            if (edge.riseMm() != 0) {
                Segment chord = outline.ring().side(leg.edge());
                double off = new Arc(chord.from(), chord.to(), edge.riseMm()).distanceMm(joint.back());
                if (off < clearances.givenMm().getOrDefault(leg.edge(), edge.clearanceMm()) - TOLERANCE_MM) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a convex part keeps clear of all edges but some, and of planters but those of some owners. */
    public boolean isClear(Ring convex, Set<Integer> butEdges, Set<String> butOwners, RunClearances clearances) {
        for (Wall wall : walls) {
            if (!butEdges.contains(wall.edge) && !keepsClear(convex, wall.segment, clearances.mm(wall))) {
                return false;
            }
        }
        Polygon polygon = convex.toJts();
        for (Part part : parts) {
            if (!butOwners.contains(part.owner)) {
                Polygon other = part.ring.toJts();
                boolean apart = part.gapMm > 0
                        ? polygon.distance(other) >= part.gapMm - TOLERANCE_MM
                        : Overlap.areaMm2(polygon, other) < 1;
                if (!apart) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean keepsClear(Ring convex, Segment segment, double clearanceMm) {
        if (passesThrough(convex, segment)) {
            return false;
        }
        for (int i = 0; i < convex.size(); i++) {
            if (convex.side(i).distanceMm(segment) < clearanceMm - TOLERANCE_MM) {
                return false;
            }
        }
        return true;
    }

    /** Whether a segment has a part inside a convex ring, more than the tolerance deep (clipping after Cyrus and Beck). */
    private static boolean passesThrough(Ring convex, Segment segment) {
        double first = 0;
        double last = 1;
        for (int i = 0; i < convex.size(); i++) {
            Line side = new Line(convex.corner(i), convex.direction(i));
            double from = side.offsetMm(segment.from()) - TOLERANCE_MM;
            double to = side.offsetMm(segment.to()) - TOLERANCE_MM;
            if (from <= 0 && to <= 0) {
                return false;
            }
            if (from < 0) {
                first = Math.max(first, from / (from - to));
            } else if (to < 0) {
                last = Math.min(last, from / (from - to));
            }
        }
        return first < last;
    }

    /** A straight edge as it is; a curved one in chords or tangents on the border's side of it. */
    static List<Segment> straightLengths(Segment chord, double riseMm) {
        if (riseMm == 0) {
            return List.of(chord);
        }
        Arc arc = new Arc(chord.from(), chord.to(), riseMm);
        double radius = arc.radiusMm();
        double step = 2 * StrictMath.acos(1 - Math.min(1, CURVE_TOLERANCE_MM / radius));
        int count = (int) Math.max(2, Math.ceil(Math.abs(arc.sweep()) / step));
        double half = arc.sweep() / count / 2;
        List<Point> points = new ArrayList<>();
        points.add(chord.from());
        for (int i = 0; i < count; i++) {
            if (riseMm > 0) {
                points.add(i + 1 == count ? chord.to() : arc.at((i + 1) / (double) count));
            } else {
                points.add(arc.polar(radius / StrictMath.cos(half), arc.startBearing() + (2 * i + 1) * half));
            }
        }
        if (riseMm < 0) {
            points.add(chord.to());
        }
        List<Segment> lengths = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            lengths.add(new Segment(points.get(i), points.get(i + 1)));
        }
        return lengths;
    }
}
