package borderwright.engine.survey;

import borderwright.engine.geometry.Point;
import java.util.List;

/**
 * Heights of the ground at the levelled points, and between them.
 *
 * @param spots levelled points; empty means level ground at the datum
 */
public record Ground(List<Spot> spots) {
    public static final Ground LEVEL = new Ground(List.of());

    public Ground {
        spots = List.copyOf(spots);
    }

    /**
     * One levelled point.
     *
     * @param name the point's name
     * @param at where, mm
     * @param heightMm height above the datum, mm
     * @param sdMm its standard deviation, mm
     */
    public record Spot(String name, Point at, double heightMm, double sdMm) {}

    /**
     * Height of the ground at a place, mm above the datum: weighted by inverse squared distance over the levelled points
     * (Shepard 1968), which returns each levelled height at its own place and never leaves their range.
     */
    public double heightMm(Point at) {
        if (spots.isEmpty()) {
            return 0;
        }
        double weights = 0;
        double sum = 0;
        for (Spot spot : spots) {
            double distanceMm = spot.at().distanceMm(at);
            if (distanceMm < 1e-6) {
                return spot.heightMm();
            }
            double weight = 1 / (distanceMm * distanceMm);
            weights += weight;
            sum += weight * spot.heightMm();
        }
        return sum / weights;
    }
}
