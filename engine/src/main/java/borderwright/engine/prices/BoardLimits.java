package borderwright.engine.prices;

import borderwright.engine.garden.Garden;
import borderwright.engine.garden.OwnedBoard;
import borderwright.engine.measure.Length;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How long a piece of each section can be: the longest board that can be had, less its trims. */
public final class BoardLimits {
    /** Taken when nobody sells a section, so that its pieces can still be planned and priced by hand (common practice, no source). */
    public static final double UNSOLD_LONGEST_MM = 4800;

    private BoardLimits() {}

    /**
     * Longest piece by section name, mm.
     *
     * @param boards boards that can be bought and brought home
     */
    public static Map<String, Double> longestPieceMm(Garden garden, List<BoardOffer> boards) {
        double trimMm = garden.cutting().trim().mm();
        Map<String, Double> longest = new TreeMap<>();
        for (BoardOffer board : boards) {
            longest.merge(board.section(), new Length(board.lengthTicks()).mm() - 2 * trimMm, Math::max);
        }
        for (OwnedBoard board : garden.owned()) {
            longest.merge(board.section(), board.length().mm(), Math::max);
        }
        garden.sections().forEach(section -> longest.putIfAbsent(section.name(), UNSOLD_LONGEST_MM));
        return longest;
    }
}
