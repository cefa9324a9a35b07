package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.parts.ScrewLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Finds screws by their place on the plan: each stands in every square cell that its bounds touch. */
final class ScrewGrid {
    private static final double CELL_MM = 100;

    private final Map<Long, List<Placed>> cells = new HashMap<>();

    /** The line that was asked about last, and what was found: places one above the other are asked about in a row. */
    private @Nullable ScrewLine last;

    private List<Placed> found = List.of();

    /**
     * A screw that stands.
     *
     * @param line from head to point
     * @param diameterMm of its thread
     */
    record Placed(ScrewLine line, double diameterMm) {}

    void put(Placed screw) {
        for (long key : keys(screw.line, 0)) {
            cells.computeIfAbsent(key, k -> new ArrayList<>()).add(screw);
        }
        last = null;
    }

    /** Screws that may come so near to a line on the plan, mm, some more than once; none that does is left out. */
    List<Placed> near(ScrewLine line, double withinMm) {
        ScrewLine before = last;
        if (before == null || !isAbove(line, before)) {
            last = line;
            found = new ArrayList<>();
            for (long key : keys(line, withinMm)) {
                found.addAll(cells.getOrDefault(key, List.of()));
            }
        }
        return found;
    }

    private static boolean isAbove(ScrewLine a, ScrewLine b) {
        return a.xMm() == b.xMm()
                && a.yMm() == b.yMm()
                && a.alongX() == b.alongX()
                && a.alongY() == b.alongY()
                && a.lengthMm() == b.lengthMm();
    }

    private static List<Long> keys(ScrewLine line, double withinMm) {
        double reachX = line.alongX() * line.lengthMm();
        double reachY = line.alongY() * line.lengthMm();
        List<Long> keys = new ArrayList<>();
        for (long i = first(line.xMm(), reachX, withinMm); i <= last(line.xMm(), reachX, withinMm); i++) {
            for (long j = first(line.yMm(), reachY, withinMm); j <= last(line.yMm(), reachY, withinMm); j++) {
                keys.add((i << 32) ^ (j & 0xffff_ffffL));
            }
        }
        return keys;
    }

    private static long first(double head, double reach, double withinMm) {
        return (long) StrictMath.floor((head + StrictMath.min(0, reach) - withinMm) / CELL_MM);
    }

    private static long last(double head, double reach, double withinMm) {
        return (long) StrictMath.floor((head + StrictMath.max(0, reach) + withinMm) / CELL_MM);
    }
}
