package borderwright.engine.layout.room;

import java.util.Map;
import java.util.TreeMap;

/**
 * Distances to keep that were given for one run, in the place of the edges' own.
 *
 * @param saidMm by index of the edge, mm
 */
public record RunClearances(Map<Integer, Double> saidMm) {
    public RunClearances {
        saidMm = Map.copyOf(saidMm);
    }

    double mm(FreeRoom.Wall wall) {
        return saidMm.getOrDefault(wall.edge(), wall.clearanceMm());
    }

    /** With one more; the greater where an edge has one already. */
    public RunClearances with(int edge, double clearanceMm) {
        Map<Integer, Double> more = new TreeMap<>(saidMm);
        more.merge(edge, clearanceMm, Math::max);
        return new RunClearances(more);
    }
}
