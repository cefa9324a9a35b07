package borderwright.engine.assembly;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The face that is worked on, and coordinates on it as its reader sees them.
 *
 * <p>Of a wall it is the outside face: {@code x} runs to the right along it, {@code behind} into the box. Of a floor it is the
 * plan: {@code x} along the slats, {@code behind} across them, away from the reader.
 *
 * @param hook where the tape hooks, {@code x} and {@code behind} 0
 * @param rightwards unit vector of {@code x}; {@code behind} lies to its left
 * @param bottomMm height of the bottom edge above the datum, mm
 */
public record WorkFace(Point hook, Point rightwards, double bottomMm) {
    public double x(Point p) {
        return p.minus(hook).dot(rightwards);
    }

    public double behind(Point p) {
        return p.minus(hook).dot(rightwards.left());
    }

    /** The place on the plan of a distance along the face and one behind it. */
    public Point at(double xMm, double behindMm) {
        return hook.plus(rightwards.times(xMm)).plus(rightwards.left().times(behindMm));
    }

    Span across(Ring ring) {
        return span(ring.corners(), this::behind);
    }

    Span along(Ring ring) {
        return span(ring.corners(), this::x);
    }

    /** Between the outermost corners of a ring that lie within a margin of a depth behind the face; nothing where fewer than two do. */
    Optional<Span> alongAt(Ring ring, double behindMm, double marginMm) {
        List<Point> on = ring.corners().stream()
                .filter(p -> StrictMath.abs(behind(p) - behindMm) <= marginMm)
                .toList();
        return on.size() < 2 ? Optional.empty() : Optional.of(span(on, this::x));
    }

    Span heights(double bottom, double top) {
        return new Span(bottom - bottomMm, top - bottomMm);
    }

    private static Span span(List<Point> points, ToDoubleFunction<Point> distance) {
        return new Span(
                points.stream().mapToDouble(distance).min().orElseThrow(),
                points.stream().mapToDouble(distance).max().orElseThrow());
    }
}
