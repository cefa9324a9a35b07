package borderwright.engine.buying.boards;

import borderwright.engine.stock.CuttingPattern;
import org.jspecify.annotations.Nullable;

/** A column of a model in whole numbers: packs of a board, an extra, or a pattern. */
final class ModelColumn {
    private final Kind kind;
    private final int part;
    private final int index;
    private final @Nullable CuttingPattern pattern;
    private final long cost;
    private final int[] row;
    private final long[] entry;
    private final long most;
    private final long least;

    /** What a column stands for, in the order in which a search branches on them. */
    enum Kind {
        /** Boards of a section in all, or those of it that are long enough. */
        TOTAL,
        /** Packs bought of a board. */
        COUNT,
        /** How many of an extra. */
        EXTRA,
        /** How many boards are cut to a pattern. */
        PATTERN
    }

    /**
     * @param kind what it stands for
     * @param part index of the part, -1 for extras
     * @param index board of a count or pattern, number of an extra; of a total its row "boards less total"
     * @param pattern the pattern; null for others
     * @param cost whole cost
     * @param row rows with an entry
     * @param entry whole entries
     * @param most the most that any sensible answer takes
     * @param least below which none can be taken, at least 1
     */
    ModelColumn(
            Kind kind,
            int part,
            int index,
            @Nullable CuttingPattern pattern,
            long cost,
            int[] row,
            long[] entry,
            long most,
            long least) {
        this.kind = kind;
        this.part = part;
        this.index = index;
        this.pattern = pattern;
        this.cost = cost;
        this.row = row;
        this.entry = entry;
        this.most = most;
        this.least = least;
    }

    Kind kind() {
        return kind;
    }

    int part() {
        return part;
    }

    int index() {
        return index;
    }

    @Nullable
    CuttingPattern pattern() {
        return pattern;
    }

    long cost() {
        return cost;
    }

    int entries() {
        return row.length;
    }

    int row(int k) {
        return row[k];
    }

    long entry(int k) {
        return entry[k];
    }

    long most() {
        return most;
    }

    /** Below which none can be taken: an answer has 0 of it or at least so many. */
    long least() {
        return least;
    }

    /** Whether a number lies between 0 and the least that can be taken, by more than {@code tolerance}. */
    boolean isTooFew(double number, double tolerance) {
        return number > tolerance && number < least - tolerance;
    }

    /** What whole row prices ask of one of it. */
    long worthAt(long[] prices) {
        long worth = 0;
        for (int k = 0; k < row.length; k++) {
            worth += prices[row[k]] * entry[k];
        }
        return worth;
    }

    /** The rows, for a linear programme. */
    int[] copyOfRows() {
        return row.clone();
    }
}
