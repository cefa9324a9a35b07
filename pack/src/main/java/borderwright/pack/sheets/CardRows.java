package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import java.util.ArrayList;
import java.util.List;

/** Rows of set-up cards in the order of work: two to a row, but a card with many pieces across the whole page. */
final class CardRows {
    /** As many labels as half a page holds in four lines. */
    private static final int MANY_PIECES = 16;

    private CardRows() {}

    static List<List<CuttingPlan.SetUp>> of(List<CuttingPlan.SetUp> setUps) {
        List<List<CuttingPlan.SetUp>> rows = new ArrayList<>();
        List<CuttingPlan.SetUp> open = new ArrayList<>();
        for (CuttingPlan.SetUp setUp : setUps) {
            boolean wide = setUp.labels().size() > MANY_PIECES;
            if (!open.isEmpty() && (wide || open.size() == 2)) {
                rows.add(List.copyOf(open));
                open.clear();
            }
            if (wide) {
                rows.add(List.of(setUp));
            } else {
                open.add(setUp);
            }
        }
        if (!open.isEmpty()) {
            rows.add(List.copyOf(open));
        }
        return rows;
    }

    /** Whether a row holds one card across the whole page. */
    static boolean isWide(List<CuttingPlan.SetUp> row) {
        return row.size() == 1 && row.get(0).labels().size() > MANY_PIECES;
    }
}
