package borderwright.engine.buildup.joints;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Heights for the screws of a joint, one above the other at equal distances.
 *
 * @param lowMm the lowest where nothing is in the way
 * @param highMm the highest
 * @param leastMm none lower
 * @param mostMm none higher
 * @param apartMm the outermost two are moved no nearer to each other
 */
record Heights(double lowMm, double highMm, double leastMm, double mostMm, double apartMm) {
    private static final double STEP_MM = 4;
    private static final int STEPS = 9;
    private static final List<int[]> MOVES = moves();

    /** Screws nearer to each other along the grain split it: a1 of EN 1995-1-1 table 8.2 in drilled holes, in diameters. */
    private static final double APART = 5;

    /** The end of an upright that nothing pulls at: a3,c of the same table, in diameters. */
    private static final double END = 7;

    /** To an edge: a4,c is 3; the fourth is for the drill that runs off. */
    private static final double EDGE = 4;

    /**
     * Heights in a board that stands on edge against an upright.
     *
     * @param bottomMm of the board
     * @param topMm of the board
     * @param share of the board's height from its edges to the outermost screws
     * @param endMm top of the upright
     * @param diameterMm of the screw
     */
    static Heights of(double bottomMm, double topMm, double share, double endMm, double diameterMm) {
        double inset = share * (topMm - bottomMm);
        double edge = StrictMath.min(EDGE * diameterMm, inset);
        double most = StrictMath.min(topMm - edge, endMm - END * diameterMm);
        if (most - bottomMm - edge < APART * diameterMm) {
            most = StrictMath.min(topMm - edge, endMm - EDGE * diameterMm);
        }
        double least = bottomMm + edge;
        double high = StrictMath.min(topMm - inset, most);
        double apart = StrictMath.min(topMm - bottomMm - 2 * inset, APART * diameterMm);
        double low = StrictMath.max(least, StrictMath.min(bottomMm + inset, high - apart));
        return new Heights(low, StrictMath.max(low, high), least, StrictMath.max(low, most), APART * diameterMm);
    }

    /** Sets of so many heights: as wanted first, then moved and drawn together or apart step by step. */
    Stream<List<Double>> choices(int count) {
        return MOVES.stream().filter(this::isWithin).map(moved -> spread(low(moved), high(moved), count));
    }

    private boolean isWithin(int[] moved) {
        double low = low(moved);
        double high = high(moved);
        return low >= leastMm && high <= mostMm && high - low >= StrictMath.min(apartMm, highMm - lowMm);
    }

    private double low(int[] moved) {
        return lowMm + moved[0] * STEP_MM;
    }

    private double high(int[] moved) {
        return highMm + moved[1] * STEP_MM;
    }

    /** Steps of the lowest and of the highest, none at all first, then the least; moves of both together before others. */
    private static List<int[]> moves() {
        List<int[]> moves = new ArrayList<>();
        for (int low = -STEPS; low <= STEPS; low++) {
            for (int high = -STEPS; high <= STEPS; high++) {
                moves.add(new int[] {low, high});
            }
        }
        moves.sort(Comparator.comparingInt((int[] m) -> StrictMath.max(StrictMath.abs(m[0]), StrictMath.abs(m[1])))
                .thenComparingInt(m -> StrictMath.abs(m[0] - m[1])));
        return List.copyOf(moves);
    }

    private static List<Double> spread(double low, double high, int count) {
        List<Double> heights = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            heights.add(count == 1 ? (low + high) / 2 : low + (high - low) * k / (count - 1));
        }
        return heights;
    }
}
