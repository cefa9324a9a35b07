package borderwright.engine.strength.box;

import java.util.List;

/**
 * How one course of one side has moved.
 *
 * @param side index of the side
 * @param course its course from the bottom, 1 first
 * @param heightMm height of the course's middle above the datum
 * @param points along the side, in order; two at one place where boards are joined
 */
public record BowLine(int side, int course, double heightMm, List<At> points) {
    public BowLine {
        points = List.copyOf(points);
    }

    /**
     * One place on it.
     *
     * @param alongMm distance along the side from its first corner, on the middle line, mm
     * @param outMm how far it has moved out of the box, mm; inwards negative
     */
    public record At(double alongMm, double outMm) {}

    /** The place that has moved out furthest. */
    public At greatest() {
        At greatest = points.get(0);
        for (At at : points) {
            greatest = at.outMm > greatest.outMm ? at : greatest;
        }
        return greatest;
    }
}
