package borderwright.engine.buildup.walls;

import java.util.ArrayList;
import java.util.List;

/** How the screws of a capping board are spread along it (spacing: common practice, no source). */
public final class CappingScrews {
    static final double SPACING_MM = 400;

    private CappingScrews() {}

    /**
     * Places from one end to the other, at least two, the others evenly between.
     *
     * @param fromMm one end
     * @param toMm the other
     * @param endMm from either end to the screw beside it; less where the board is short
     */
    public static List<Double> between(double fromMm, double toMm, double endMm) {
        double lengthMm = toMm - fromMm;
        double end = StrictMath.min(endMm, lengthMm / 4);
        int spaces = StrictMath.max(1, (int) StrictMath.ceil((lengthMm - 2 * end) / SPACING_MM - 1e-9));
        List<Double> places = new ArrayList<>();
        for (int i = 0; i <= spaces; i++) {
            places.add(fromMm + end + (lengthMm - 2 * end) * i / spaces);
        }
        return places;
    }
}
