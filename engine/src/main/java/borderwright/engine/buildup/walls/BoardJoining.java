package borderwright.engine.buildup.walls;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where a side longer than the longest board is joined: on supports, with the fewest pieces, and among those the most
 * even lengths (shortest path over the supports in order).
 *
 * <p>See docs/decisions/0032.
 */
public final class BoardJoining {
    /** A joint nearer to an end would meet its bevel, or leave a piece too short to hold. */
    private static final double FROM_END_MM = 200;

    private BoardJoining() {}

    /**
     * The joints in order; nothing where some gap between supports is longer than the longest piece.
     *
     * @param fromMm where the board starts
     * @param toMm where it ends
     * @param longestMm longest piece
     * @param supports where it may be joined, in order; those within 200 mm of an end are passed over
     * @param taken supports not to be used, joined already in the course below
     */
    public static Optional<List<Double>> choose(
            double fromMm, double toMm, double longestMm, List<Double> supports, Set<Double> taken) {
        if (toMm - fromMm <= longestMm) {
            return Optional.of(List.of());
        }
        List<Double> stops = new ArrayList<>();
        stops.add(fromMm);
        for (double support : supports) {
            if (support > fromMm + FROM_END_MM && support < toMm - FROM_END_MM && !taken.contains(support)) {
                stops.add(support);
            }
        }
        stops.add(toMm);
        int[] previous = shortest(stops, longestMm);
        if (previous[stops.size() - 1] < 0) {
            return Optional.empty();
        }
        List<Double> joints = new ArrayList<>();
        for (int i = previous[stops.size() - 1]; i > 0; i = previous[i]) {
            joints.add(0, stops.get(i));
        }
        return Optional.of(joints);
    }

    private static int[] shortest(List<Double> stops, double longestMm) {
        int n = stops.size();
        int[] count = new int[n];
        double[] squares = new double[n];
        int[] previous = new int[n];
        Arrays.fill(previous, -1);
        for (int j = 1; j < n; j++) {
            for (int i = j - 1; i >= 0 && stops.get(j) - stops.get(i) <= longestMm; i--) {
                if (i > 0 && previous[i] < 0) {
                    continue;
                }
                double piece = stops.get(j) - stops.get(i);
                int pieces = count[i] + 1;
                double sum = squares[i] + piece * piece;
                if (previous[j] < 0 || pieces < count[j] || (pieces == count[j] && sum < squares[j] - 1e-6)) {
                    previous[j] = i;
                    count[j] = pieces;
                    squares[j] = sum;
                }
            }
        }
        return previous;
    }
}
