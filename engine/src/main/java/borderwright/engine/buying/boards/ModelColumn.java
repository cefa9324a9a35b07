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
    private final Entries entries;
    private final Takes takes;

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

    /** Where a column stands in the rows. */
    static final class Entries {
        private final int[] row;
        private final long[] value;

        /**
         * @param row rows with an entry
         * @param value the entry in each of them
         */
        Entries(int[] row, long[] value) {
            this.row = row;
            this.value = value;
        }
    }

    /**
     * How many of a column an answer takes, where it takes any.
     *
     * @param least below which none can be taken, at least 1
     * @param most the most that any sensible answer takes
     */
    record Takes(long least, long most) {
        static Takes upTo(long most) {
            return new Takes(1, most);
        }
    }

    private ModelColumn(
            Kind kind, int part, int index, @Nullable CuttingPattern pattern, long cost, Entries entries, Takes takes) {
        this.kind = kind;
        this.part = part;
        this.index = index;
        this.pattern = pattern;
        this.cost = cost;
        this.entries = entries;
        this.takes = takes;
    }

    /** Boards of a part in all; {@code row} is its row "boards less total", and the next one its opposite. */
    static ModelColumn total(int part, int row, Takes takes) {
        Entries entries = new Entries(new int[] {row, row + 1}, new long[] {-1, 1});
        return new ModelColumn(Kind.TOTAL, part, row, null, 0, entries, takes);
    }

    /** Packs of a board. */
    static ModelColumn count(int part, int board, long cost, Entries entries, Takes takes) {
        return new ModelColumn(Kind.COUNT, part, board, null, cost, entries, takes);
    }

    /** An extra by its number. */
    static ModelColumn extra(int number, long cost, Entries entries, Takes takes) {
        return new ModelColumn(Kind.EXTRA, -1, number, null, cost, entries, takes);
    }

    /** Boards of a part cut to a pattern. */
    static ModelColumn pattern(int part, CuttingPattern pattern, long cost, Entries entries, Takes takes) {
        return new ModelColumn(Kind.PATTERN, part, pattern.board(), pattern, cost, entries, takes);
    }

    Kind kind() {
        return kind;
    }

    /** Index of the part, -1 for extras. */
    int part() {
        return part;
    }

    /** Board of a count or pattern, number of an extra; of a total its row "boards less total". */
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
        return entries.row.length;
    }

    int row(int k) {
        return entries.row[k];
    }

    long entry(int k) {
        return entries.value[k];
    }

    long most() {
        return takes.most;
    }

    /** Below which none can be taken: an answer has 0 of it or at least so many. */
    long least() {
        return takes.least;
    }

    /** Whether a number lies between 0 and the least that can be taken, by more than {@code tolerance}. */
    boolean isTooFew(double number, double tolerance) {
        return number > tolerance && number < takes.least - tolerance;
    }

    /** What whole row prices ask of one of it. */
    long worthAt(long[] prices) {
        int[] row = entries.row;
        long[] entry = entries.value;
        long worth = 0;
        for (int k = 0; k < row.length; k++) {
            worth += prices[row[k]] * entry[k];
        }
        return worth;
    }

    /** The rows, for a linear programme. */
    int[] copyOfRows() {
        return entries.row.clone();
    }
}
