package borderwright.engine.layout.room;

import java.util.Map;
import java.util.TreeMap;

/**
 * Distances to keep that were given for one run, in the place of the edges' own.
 *
 * @param givenMm by index of the edge, mm
 */
public record RunClearances(Map<Integer, Double> givenMm) {
    public RunClearances {
        givenMm = Map.copyOf(givenMm);
    }

    double mm(FreeRoom.Wall wall) {
        return givenMm.getOrDefault(wall.edge(), wall.clearanceMm());
    }

    /** With one more; the greater where an edge has one already. */
    public RunClearances with(int edge, double clearanceMm) {
        Map<Integer, Double> more = new TreeMap<>(givenMm);
        more.merge(edge, clearanceMm, Math::max);
        return new RunClearances(more);
    }
}
