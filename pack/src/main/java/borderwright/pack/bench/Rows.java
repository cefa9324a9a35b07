package borderwright.pack.bench;

import java.util.ArrayList;
import java.util.List;

/** Items side by side. */
final class Rows {
    /** Widths of a third of a page and of half of one, the gap between columns taken off, in ems of the rows' 10 pt. */
    private static final double THIRD_EM = 58 / 3.528;

    private static final double HALF_EM = 88 / 3.528;

    private Rows() {}

    /** How many texts stand side by side on a page, by the widest of them. */
    static int columns(double widestEm) {
        return widestEm <= THIRD_EM ? 3 : widestEm <= HALF_EM ? 2 : 1;
    }

    /** Row by row, each of so many items but the last. */
    static <T> List<List<T>> of(List<T> items, int columns) {
        List<List<T>> rows = new ArrayList<>();
        for (int i = 0; i < items.size(); i += columns) {
            rows.add(items.subList(i, StrictMath.min(items.size(), i + columns)));
        }
        return rows;
    }
}
