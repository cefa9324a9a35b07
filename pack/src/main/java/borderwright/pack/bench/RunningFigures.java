package borderwright.pack.bench;

import borderwright.pack.figures.PrintedFigures;
import java.util.NavigableMap;

/** The figures of a row of running distances. */
final class RunningFigures {
    /** Distances nearer than this are written once, and the zero mark not at all. */
    private static final double SAME_MM = 0.5;

    private RunningFigures() {}

    /** Adds a distance unless it is written already. */
    static void put(PrintedFigures f, NavigableMap<Double, String> row, double x) {
        Double near = row.floorKey(x + SAME_MM);
        if (x > SAME_MM && (near == null || near < x - SAME_MM)) {
            row.put(x, f.length(x));
        }
    }
}
