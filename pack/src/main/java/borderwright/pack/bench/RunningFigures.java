package borderwright.pack.bench;

import borderwright.pack.figures.PrintedFigures;
import java.util.Collection;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeSet;

/** The figures of a row of running distances. */
final class RunningFigures {
    /** Distances nearer than this are written once, and the zero mark not at all. */
    private static final double SAME_MM = 0.5;

    private RunningFigures() {}

    /** How many figures a row of some distances has. */
    static int count(Collection<Double> distances) {
        TreeSet<Double> row = new TreeSet<>();
        for (double x : distances) {
            if (isNew(row, x)) {
                row.add(x);
            }
        }
        return row.size();
    }

    /** Adds a distance unless it is written already. */
    static void put(PrintedFigures f, NavigableMap<Double, String> row, double x) {
        if (isNew(row.navigableKeySet(), x)) {
            row.put(x, f.length(x));
        }
    }

    private static boolean isNew(NavigableSet<Double> row, double x) {
        Double near = row.floor(x + SAME_MM);
        return x > SAME_MM && (near == null || near < x - SAME_MM);
    }
}
