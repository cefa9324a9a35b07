package borderwright.pack.bench;

import java.util.ArrayList;
import java.util.List;

/** Items side by side. */
final class Rows {
    private Rows() {}

    /** Row by row, each of so many items but the last. */
    static <T> List<List<T>> of(List<T> items, int columns) {
        List<List<T>> rows = new ArrayList<>();
        for (int i = 0; i < items.size(); i += columns) {
            rows.add(items.subList(i, StrictMath.min(items.size(), i + columns)));
        }
        return rows;
    }
}
