package borderwright.engine.layout.plan;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Ground between a side of a box and what faces it: an aisle between beds, or a gap to a wall.
 *
 * <p>Measured square to the side, at the middle of the length along which the two face each other. What stands askew to the
 * side by more than about two degrees does not face it, and an open edge stops nobody. To a curved edge the gap is measured where
 * it is least.
 *
 * @param box name of the box
 * @param run of the box
 * @param faces the other box's run, or the border's edge such as {@code A B}
 * @param across from the side of the box to what faces it; its length is the width of the gap
 */
public record FacingGap(String box, String run, String faces, Segment across) {
    private static final double PARALLEL = 0.9995;
    private static final double LEAST_MM = 1;
    private static final double LEAST_FACING_MM = 50;

    public double widthMm() {
        return across.lengthMm();
    }

    /** What may face a side: a line with the ground in front of it, and the number of its box, or none. */
    private record Facing(Segment line, int box, String name) {}

    /** A curved edge as places along it, anticlockwise round the border. */
    private record Curve(List<Point> places, String name) {}

    /** A stretch of a side, from one distance along it to another, mm, and how wide the gap is at its middle. */
    private record Stretch(double fromMm, double toMm, double widthMm, Point foot, int box, String faces) {
        boolean overlaps(Stretch other) {
            return fromMm < other.toMm && other.fromMm < toMm;
        }
    }

    /** Every gap once, in the order of the boxes and their sides. Time in proportion to the square of the sides. */
    public static List<FacingGap> of(List<FootprintPlan> boxes, Outline outline) {
        List<Facing> all = facing(boxes, outline);
        List<Curve> curves = curves(outline);
        List<FacingGap> gaps = new ArrayList<>();
        for (int b = 0; b < boxes.size(); b++) {
            FootprintPlan box = boxes.get(b);
            for (int i = 0; i < box.outline().size(); i++) {
                for (Stretch stretch : nearest(box.outline().side(i), b, all, curves)) {
                    // Two boxes that face each other do so from both; the first tells it.
                    if (stretch.widthMm >= LEAST_MM && (stretch.box < 0 || stretch.box > b)) {
                        Point out = box.outline().direction(i).left().times(-stretch.widthMm);
                        Segment across = new Segment(stretch.foot, stretch.foot.plus(out));
                        gaps.add(new FacingGap(box.name(), box.run(), stretch.faces, across));
                    }
                }
            }
        }
        return gaps;
    }

    private static List<Facing> facing(List<FootprintPlan> boxes, Outline outline) {
        List<Facing> all = new ArrayList<>();
        for (int b = 0; b < boxes.size(); b++) {
            Ring ring = boxes.get(b).outline();
            for (int i = 0; i < ring.size(); i++) {
                all.add(new Facing(ring.side(i), b, boxes.get(b).run()));
            }
        }
        Ring border = outline.ring();
        for (int i = 0; i < border.size(); i++) {
            if (outline.edges().get(i).kind() != EdgeKind.OPEN
                    && outline.edges().get(i).riseMm() == 0) {
                all.add(new Facing(new Segment(border.corner(i + 1), border.corner(i)), -1, outline.edgeName(i)));
            }
        }
        return all;
    }

    private static List<Curve> curves(Outline outline) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < outline.edges().size(); i++) {
            if (outline.edges().get(i).kind() != EdgeKind.OPEN
                    && outline.edges().get(i).riseMm() != 0) {
                curves.add(new Curve(outline.placesAlong(i), outline.edgeName(i)));
            }
        }
        return curves;
    }

    /** What faces a side, the nearer hiding the farther. */
    private static List<Stretch> nearest(Segment side, int box, List<Facing> all, List<Curve> curves) {
        List<Stretch> stretches = new ArrayList<>();
        for (Facing facing : all) {
            if (facing.box != box) {
                stretch(side, facing).ifPresent(stretches::add);
            }
        }
        curves.forEach(curve -> stretch(side, curve).ifPresent(stretches::add));
        stretches.sort(Comparator.comparingDouble(Stretch::widthMm));
        List<Stretch> seen = new ArrayList<>();
        for (Stretch stretch : stretches) {
            if (seen.stream().noneMatch(stretch::overlaps)) {
                seen.add(stretch);
            }
        }
        return seen;
    }

    private static Optional<Stretch> stretch(Segment side, Facing facing) {
        Point along = side.to().minus(side.from()).unit();
        Point other = facing.line.to().minus(facing.line.from()).unit();
        if (along.dot(other) > -PARALLEL) {
            return Optional.empty();
        }
        double from = StrictMath.max(0, facing.line.to().minus(side.from()).dot(along));
        double to = StrictMath.min(
                side.lengthMm(), facing.line.from().minus(side.from()).dot(along));
        if (to - from < LEAST_FACING_MM) {
            return Optional.empty();
        }
        Point foot = side.from().plus(along.times((from + to) / 2));
        Point out = along.left().times(-1);
        double width = facing.line.from().minus(foot).cross(other) / out.cross(other);
        // What touches the side hides all that lies behind it.
        return width < -LEAST_MM
                ? Optional.empty()
                : Optional.of(new Stretch(from, to, width, foot, facing.box, facing.name));
    }

    /** The whole side against a curve that lies in front of all of it, and faces it: where the gap is least. */
    private static Optional<Stretch> stretch(Segment side, Curve curve) {
        Point along = side.to().minus(side.from()).unit();
        Point out = along.left().times(-1);
        Optional<Double> first = across(side.from(), along, out, curve.places);
        Optional<Double> last = across(side.to(), along, out, curve.places);
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        double least = StrictMath.min(first.get(), last.get());
        double at = first.get() <= last.get() ? 0 : side.lengthMm();
        for (Point place : curve.places) {
            double s = place.minus(side.from()).dot(along);
            double width = place.minus(side.from()).dot(out);
            if (s > 0 && s < side.lengthMm() && width < least) {
                least = width;
                at = s;
            }
        }
        Point foot = side.from().plus(along.times(at));
        return least < -LEAST_MM
                ? Optional.empty()
                : Optional.of(new Stretch(0, side.lengthMm(), least, foot, -1, curve.name));
    }

    /** How far a curve lies from a place in a direction; empty where none of it does, or where it turns its back. */
    private static Optional<Double> across(Point place, Point along, Point out, List<Point> curve) {
        Optional<Double> nearest = Optional.empty();
        for (int i = 0; i + 1 < curve.size(); i++) {
            Point a = curve.get(i).minus(place);
            Point b = curve.get(i + 1).minus(place);
            double from = a.dot(along);
            double to = b.dot(along);
            // The border goes round anticlockwise, so what faces a side goes along it.
            if (from <= 0 && to >= 0 && to > from) {
                double width = (a.dot(out) * to - b.dot(out) * from) / (to - from);
                if (width > -LEAST_MM && nearest.filter(other -> other <= width).isEmpty()) {
                    nearest = Optional.of(width);
                }
            }
        }
        return nearest;
    }
}
