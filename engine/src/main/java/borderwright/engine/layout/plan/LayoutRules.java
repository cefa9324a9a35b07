package borderwright.engine.layout.plan;

import java.util.OptionalDouble;

/**
 * What the layout needs to know of how boxes are built.
 *
 * <p>See docs/decisions/0061.
 *
 * @param wallMm thickness of the wall boards, mm
 * @param courseMm height of one course (width of the wall boards), mm
 * @param longestBoardMm the longest board to be had, mm; planters longer than this are pointed out
 * @param feetMm least height of the feet that boxes stand on over hard ground, mm; empty where they are dug in
 */
public record LayoutRules(double wallMm, double courseMm, double longestBoardMm, OptionalDouble feetMm) {
    /** Least angle inside a box at any of its corners, degrees; the greatest is the full turn less this. */
    public static final double LEAST_ANGLE_DEG = 45;

    /** Greatest angle inside a box at any of its corners, degrees. */
    public static final double GREATEST_ANGLE_DEG = 360 - LEAST_ANGLE_DEG;

    /** Shortest piece held safely by a mitre gauge (common practice, manuals of bench saws). */
    private static final double SHORTEST_PIECE_MM = 150;

    /** So many thicknesses leave an inner face even between two corners of 45 degrees, which take 2.42 each. */
    private static final double WALLS_IN_AN_EDGE = 5;

    /** A planter shorter than this holds one pot; the garden document asks for at least as much. */
    private static final double SHORTEST_PLANTER_MM = 200;

    /** For boxes that are dug in. */
    public LayoutRules(double wallMm, double courseMm, double longestBoardMm) {
        this(wallMm, courseMm, longestBoardMm, OptionalDouble.empty());
    }

    public LayoutRules {
        if (!(wallMm > 0 && courseMm > 0 && longestBoardMm > 0)) {
            throw new IllegalArgumentException("wall, course and board are more than 0 mm, got " + wallMm + ", "
                    + courseMm + ", " + longestBoardMm);
        }
    }

    /** Whether boxes stand on hard ground, that cannot be dug. */
    public boolean onHardGround() {
        return feetMm.isPresent();
    }

    /** Least length of any side of a box, and so least depth, mm: 150, or five times the walls' thickness. */
    public double leastEdgeMm() {
        return Math.max(SHORTEST_PIECE_MM, WALLS_IN_AN_EDGE * wallMm);
    }

    /** Least length of a planter along its run, mm. */
    public double leastPlanterMm() {
        return Math.max(SHORTEST_PLANTER_MM, leastEdgeMm());
    }
}
