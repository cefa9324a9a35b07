package borderwright.engine.buildup.walls;

import java.util.ArrayList;
import java.util.List;

/** Where the screws of a capping board stand: one near each end, the others evenly between (common practice, no source). */
public final class CappingScrews {
    static final double SPACING_MM = 400;
    private static final double FROM_END_MM = 50;

    private CappingScrews() {}

    /** Distances from the start of a board of this length, mm, in order; at least two. */
    public static List<Double> along(double lengthMm) {
        double end = Math.min(FROM_END_MM, lengthMm / 4);
        int spaces = Math.max(1, (int) StrictMath.ceil((lengthMm - 2 * end) / SPACING_MM - 1e-9));
        List<Double> places = new ArrayList<>();
        for (int i = 0; i <= spaces; i++) {
            places.add(end + (lengthMm - 2 * end) * i / spaces);
        }
        return places;
    }
}
