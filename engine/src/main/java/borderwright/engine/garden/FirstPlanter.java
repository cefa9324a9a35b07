package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the first planter showed, once it stood: a prototype, measured before the rest is cut. Absent is what was not measured.
 *
 * @param cuttingHours to cut it, saw set-ups and all people together
 * @param buildingHours to build it, all people together
 * @param kerf that the saw really took
 * @param saw whose cut was measured; all of them where none is named
 * @param boards that were looked over
 * @param bulge of its worst side after a season or more
 */
public record FirstPlanter(
        OptionalDouble cuttingHours,
        OptionalDouble buildingHours,
        Optional<Length> kerf,
        Optional<String> saw,
        Optional<LookedOver> boards,
        Optional<Length> bulge) {
    /** The share of rejects taken before counts as this many boards: a few boards tell little (common practice, no source). */
    private static final double PRIOR_BOARDS = 20;

    /** Boards that were looked over, and how many of them were of no use. */
    public record LookedOver(int count, int unusable) {}

    /**
     * Share of boards that turn out unusable, in percent, after what the first planter showed.
     *
     * @param before share taken before, in percent
     */
    public double rejects(double before) {
        if (boards.isEmpty()) {
            return before;
        }
        int count = boards.get().count();
        int bad = Math.min(boards.get().unusable(), count);
        return 100 * (before / 100 * PRIOR_BOARDS + bad) / (PRIOR_BOARDS + count);
    }

    /** A saw, with its kerf as measured where it was. */
    public SawSpec measured(SawSpec before) {
        return kerf.isPresent() && saw.map(before.name()::equals).orElse(true) ? before.withKerf(kerf.get()) : before;
    }

    /** Cutting, with the share of unusable boards as counted where they were. */
    CuttingSpec measured(CuttingSpec before) {
        return boards.isEmpty() ? before : before.withRejects(rejects(before.rejectsPercent()));
    }
}
