package borderwright.engine.survey;

import borderwright.engine.geometry.Point;
import java.util.List;

/**
 * Heights of the ground at the levelled points, and between them.
 *
 * @param spots levelled points; empty means level ground at the datum
 */
public record GroundHeights(List<Spot> spots) {
    public static final GroundHeights LEVEL = new GroundHeights(List.of());

    public GroundHeights {
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
     * Height of the ground at a place, mm above the datum: the plane that fits the levels best, and what each level lies off it
     * spread by inverse squared distance (Shepard 1968). Each level comes back at its own place, ground that is a plane comes
     * back everywhere, and far from all levels the plane goes on. Time in proportion to the levels.
     *
     * <p>Levels along one line do not give the fall across it: there the ground is taken as level.
     */
    public double heightMm(Point at) {
        if (spots.isEmpty()) {
            return 0;
        }
        BestPlane plane = BestPlane.through(spots);
        double weights = 0;
        double sum = 0;
        for (Spot spot : spots) {
            double distanceMm = spot.at().distanceMm(at);
            if (distanceMm < 1e-6) {
                return spot.heightMm();
            }
            double weight = 1 / (distanceMm * distanceMm);
            weights += weight;
            sum += weight * (spot.heightMm() - plane.heightMm(spot.at()));
        }
        return plane.heightMm(at) + sum / weights;
    }
}
