package borderwright.engine.plan;

import borderwright.engine.garden.Garden;
import borderwright.engine.garden.OwnedBoard;
import borderwright.engine.garden.SupplierNote;
import borderwright.engine.measure.Length;
import java.util.Map;
import java.util.TreeMap;

/** How long a piece of each section can be: the longest board that can be had, less its trims. */
final class BoardLimits {
    /** Taken when nobody sells a section, so that its pieces can still be planned and priced by hand (habit). */
    static final double HABIT_LONGEST_MM = 4800;

    private BoardLimits() {}

    /** Longest piece by section name, mm. */
    static Map<String, Double> longestPieceMm(Garden garden) {
        double trimMm = garden.cuttingOrHabit().trimOrHabit().mm();
        Map<String, Double> longest = new TreeMap<>();
        for (SupplierNote supplier : garden.suppliers()) {
            double travelsMm = supplier.longest() == null
                    ? Double.POSITIVE_INFINITY
                    : supplier.longest().mm();
            for (SupplierNote.BoardPrice board : supplier.boards()) {
                if (board.length() != null) {
                    take(longest, board.section(), board.length(), travelsMm, trimMm);
                }
                for (Length length : board.lengths()) {
                    take(longest, board.section(), length, travelsMm, trimMm);
                }
            }
        }
        for (OwnedBoard board : garden.owned()) {
            longest.merge(board.section(), board.length().mm(), Math::max);
        }
        garden.sections().forEach(section -> longest.putIfAbsent(section.name(), HABIT_LONGEST_MM));
        return longest;
    }

    private static void take(
            Map<String, Double> longest, String section, Length length, double travelsMm, double trimMm) {
        if (length.mm() <= travelsMm) {
            longest.merge(section, length.mm() - 2 * trimMm, Math::max);
        }
    }
}
